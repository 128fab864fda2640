"""The front door for Python: what the command line answers, for notebooks and scripts."""
