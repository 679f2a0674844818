"""WebKitGTK through its own web driver, on a display that only exists in memory."""

import os
import subprocess
from pathlib import Path

from selenium.webdriver import WebKitGTK, WebKitGTKOptions
from selenium.webdriver.webkitgtk.service import Service

LIMIT_S = 120
BROWSER = "MiniBrowser"


class WebKit:
    """One session; it keeps nothing for another process, so ``restart`` only loads anew."""

    def __init__(self, driver: str, display: str) -> None:
        read, write = os.pipe()
        self._display = subprocess.Popen(
            [display, "-displayfd", str(write), "-screen", "0", "412x732x24", "-nolisten", "tcp"],
            pass_fds=(write,),
            stdin=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        os.close(write)
        with os.fdopen(read) as number:
            screen = f":{number.readline().strip()}"
        # Without a language the browser calls its own "C", which no list of languages holds.
        environment = {**os.environ, "DISPLAY": screen, "LANG": "en_US.UTF-8"}
        options = WebKitGTKOptions()
        options.binary_location = browser_of(driver)
        options.add_argument("--automation")
        self._driver = WebKitGTK(
            options=options, service=Service(executable_path=driver, env=environment)
        )
        self.name = f"WebKitGTK {self._driver.capabilities['browserVersion']}"
        self._driver.set_script_timeout(LIMIT_S)
        self._driver.set_page_load_timeout(LIMIT_S)

    def goto(self, address: str) -> None:
        """Opens an address and waits until it has loaded."""
        self._driver.get(address)

    def evaluate(self, expression: str) -> str:
        """The text that an expression gives, awaited where it is a promise."""
        script = (
            "const done = arguments[arguments.length - 1];"
            f"(async () => {expression})().then((text) => done([true, String(text ?? '')]),"
            "(error) => done([false, String(error)]));"
        )
        is_right, text = self._driver.execute_async_script(script)
        if not is_right:
            raise RuntimeError(text)
        return str(text)

    def restart(self) -> None:
        """The page anew; the driver's sessions end with their process and keep nothing."""
        self._driver.get("about:blank")

    def close(self) -> None:
        """Ends the browser and its display."""
        self._driver.quit()
        self._display.terminate()
        self._display.wait(timeout=LIMIT_S)


def browser_of(driver: str) -> str:
    """The small browser that Debian puts beside WebKitGTK's libraries."""
    homes = [*Path("/usr/lib").glob("*/webkit2gtk-4.1"), *Path("/usr/lib").glob("*/webkitgtk-6.0")]
    homes += [*Path("/usr/libexec").glob("webkit*"), Path(driver).parent]
    found = [home / BROWSER for home in homes if (home / BROWSER).exists()]
    if not found:
        raise FileNotFoundError(f"there is no {BROWSER} beside {driver}")
    return str(found[0])
