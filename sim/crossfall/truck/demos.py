"""Where the demo trucks are: beside the sources in a checkout, in the package when installed."""

from __future__ import annotations

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parents[1]


def demo_folder() -> Path:
    """The folder of the demo trucks. Raises FileNotFoundError where the data were not installed."""
    for folder in (_PACKAGE / "_data" / "models", _PACKAGE.parents[1] / "models"):
        if folder.is_dir():
            return folder
    raise FileNotFoundError(f"no demo trucks beside {_PACKAGE}")


def demo_names() -> tuple[str, ...]:
    """Names of the demo trucks: the files of their folder that call themselves chassis files."""
    try:
        folder = demo_folder()
    except FileNotFoundError:
        return ()
    files = (p for p in folder.glob("*.toml") if b"[chassis]" in p.read_bytes())
    return tuple(sorted(p.stem for p in files))


def find_demo(name: str) -> Path | None:
    """The file of a demo truck, or None where there is none of that name."""
    return demo_folder() / f"{name}.toml" if name in demo_names() else None
