"""The tests run on one BLAS thread, as the command line does."""

import os

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
