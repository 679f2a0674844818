"""The server and the phone of the browser tests."""

from tests.browser.conftest import page, phone, playwright, server

__all__ = ["page", "phone", "playwright", "server"]
