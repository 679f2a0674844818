"""Gets the two browsers where the system's packages have them."""

import shutil

from tests.packages import install_with_apt

FIREFOX, WEBKIT, DISPLAY = "firefox-esr", "WebKitWebDriver", "Xvfb"
PACKAGES = ("firefox-esr", "webkit2gtk-driver", "xvfb", "fonts-dejavu-core")


def ensure_engines() -> str:
    """Installs what is missing. Returns what went wrong, or nothing."""
    if _missing():
        install_with_apt(*PACKAGES)
    missing = _missing()
    return f"not here and not to be had: {', '.join(missing)}" if missing else ""


def _missing() -> list[str]:
    return [name for name in (FIREFOX, WEBKIT, DISPLAY) if shutil.which(name) is None]
