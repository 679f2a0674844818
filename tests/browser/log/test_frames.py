"""The entries of one machine from screen to camera: shown as square codes, read by a phone."""

import base64
import io
import re
import zlib
from pathlib import Path

import pytest
import zxingcpp
from PIL import Image
from playwright.sync_api import Locator, Page, Playwright, expect

from pycore.journal.file import PHONE, read_file
from tests.browser.files import start_at
from tests.browser.phone import Phone, heading, picture
from tests.browser.server import Server
from tests.browser.stored import rows, taken
from tests.browser.walk import check_until_recipe, press, save_check, set_up_machine

# What the app promises: at most so many bytes in a frame.
MOST_BYTES = 200
CAMERA = (640, 480)
# Chromium plays a file of pictures at 30 a second; a frame on the screen stands for 340 ms.
PICTURES_EACH = 10
# The next frame comes when we say so: a busy machine takes longer for a picture than one stands.
BY_HAND = """
const every = window.setInterval;
window.setInterval = (act, ms, ...rest) =>
  ms === 340 ? ((window.step = act), 0) : every(act, ms, ...rest);
"""
# Some millimetres out of focus are a blur of a pixel or so, and a hand is never quite straight.
TURN_DEG = 4


def frames_of(page: Page) -> dict[int, bytes]:
    """A picture of each frame that the page shows, by its number; it was opened ``BY_HAND``."""
    said, found = page.locator(".frame-at"), dict[int, bytes]()
    page.wait_for_function("() => window.step !== undefined")
    count = int(re.findall(r"\d+", said.inner_text())[1])
    for _ in range(count):
        found[int(re.findall(r"\d+", said.inner_text())[0])] = page.locator(".frame").screenshot()
        page.evaluate("window.step()")
    assert len(found) == count
    return found


def text_of(shot: bytes) -> str:
    # Other kinds of codes are seen in the squares of this one.
    only = zxingcpp.BarcodeFormat.QRCode
    (found,) = zxingcpp.read_barcodes(Image.open(io.BytesIO(shot)), formats=only)
    return str(found.text)


def seen(shot: bytes) -> bytes:
    """The frame as a camera sees it: turned a little, smaller, grey at the edges, as JPEG."""
    code = Image.open(io.BytesIO(shot)).convert("RGB").resize((400, 400))
    ground = Image.new("RGB", CAMERA, (96, 92, 88))
    ground.paste(code, (118, 36))
    turned = ground.rotate(TURN_DEG, resample=Image.Resampling.BICUBIC, fillcolor=(96, 92, 88))
    file = io.BytesIO()
    turned.save(file, "JPEG", quality=80)
    return file.getvalue()


def film_of(frames: dict[int, bytes], path: Path, without: int | None = None) -> Path:
    """A round of frames as a file that Chromium's fake camera plays again and again."""
    shown = [seen(shot) for number, shot in sorted(frames.items()) if number != without]
    path.write_bytes(b"".join(shot * PICTURES_EACH for shot in shown))
    return path


def camera(path: Path) -> list[str]:
    """Arguments with which Chromium takes a file for its camera and does not ask."""
    return [
        "--use-fake-device-for-media-stream",
        "--use-fake-ui-for-media-stream",
        f"--use-file-for-fake-video-capture={path}",
    ]


def main(page: Page) -> Locator:
    return page.get_by_role("main")


def shown_by(phone: Phone, server: Server) -> tuple[Page, dict[int, bytes]]:
    """A phone with a machine and a check that shows its entries, and pictures of the frames."""
    page = phone.start()
    page.goto(server.address)
    set_up_machine(page)
    check_until_recipe(page)
    save_check(page)
    page.add_init_script(BY_HAND)
    start_at(page)
    page.get_by_role("link", name="Wheel lathe").first.click()
    page.get_by_role("link", name="Hand over to another phone").click()
    page.get_by_role("link", name="Show it to another phone").click()
    expect(heading(page)).to_have_text("Show the entries")
    expect(page.locator(".frame")).to_be_visible()
    picture(page, "light-frames-01-show")
    return page, frames_of(page)


def test_entries_go_from_screen_to_camera(
    playwright: Playwright, tmp_path: Path, server: Server
) -> None:
    one, other = Phone(playwright, tmp_path / "one"), Phone(playwright, tmp_path / "other")
    try:
        page, frames = shown_by(one, server)
        texts = [text_of(shot) for _, shot in sorted(frames.items())]
        assert max(len(text.encode()) for text in texts) <= MOST_BYTES
        assert len(set(texts)) == len(texts) > 3
        there = [row["text"] for row in rows(page)]
        one.close()
        film = film_of(frames, tmp_path / "film.mjpeg")
        page = other.start(more=camera(film))
        page.goto(server.address)
        expect(page.get_by_role("button", name="Add your first machine")).to_be_visible()
        start_at(page, "take-in")
        page.get_by_role("link", name="With the camera").click()
        expect(main(page)).to_contain_text(re.compile(rf"\d+ of {len(frames)} frames"))
        picture(page, "light-frames-02-camera")
        # A file's preview: what is in it, and nothing added yet.
        expect(heading(page)).to_have_text("Take in a file")
        expect(main(page)).to_contain_text("Wheel lathe")
        assert taken(page) == []
        press(page, "Add 2 entries")
        expect(page.get_by_text("2 entries were added.")).to_be_visible()
        start_at(page)
        expect(page.get_by_role("link", name="Wheel lathe").first).to_contain_text("Too weak")
        assert sorted(row["text"] for row in taken(page)) == sorted(there)
        assert [problem for phone in (one, other) for problem in phone.problems] == []
    finally:
        one.close()
        other.close()


def test_a_round_that_lacks_a_frame_is_never_taken_for_whole(
    playwright: Playwright, tmp_path: Path, server: Server
) -> None:
    one, other = Phone(playwright, tmp_path / "one"), Phone(playwright, tmp_path / "other")
    try:
        _, frames = shown_by(one, server)
        one.close()
        page = other.start(more=camera(film_of(frames, tmp_path / "film.mjpeg", without=2)))
        page.goto(server.address)
        start_at(page, "take-in", "camera")
        expect(main(page)).to_contain_text(f"{len(frames) - 1} of {len(frames)} frames")
        # Two more rounds bring nothing that was not there.
        page.wait_for_timeout(1000 * 2 * len(frames) * PICTURES_EACH / 30)
        expect(main(page)).to_contain_text(f"{len(frames) - 1} of {len(frames)} frames")
        expect(page.locator(".frame-ticks .has")).to_have_count(len(frames) - 1)
        expect(heading(page)).to_have_text("Take in with the camera")
    finally:
        one.close()
        other.close()


def test_without_a_camera_a_file_is_offered(page: Page) -> None:
    start_at(page, "take-in", "camera")
    expect(page.get_by_role("alert")).to_contain_text("Take in a file instead")


@pytest.mark.usefixtures("machine_on_phone")
def test_shown_frames_hold_the_whole_file(page: Page) -> None:
    """Frames put together by hand, with Python's own tools, are the file that is handed over."""
    page.add_init_script(BY_HAND)
    start_at(page)
    page.get_by_role("link", name="Wheel lathe").first.click()
    page.get_by_role("link", name="Hand over to another phone").click()
    page.get_by_role("link", name="Show it to another phone").click()
    expect(page.locator(".frame")).to_be_visible()
    texts = [text_of(shot) for _, shot in sorted(frames_of(page).items())]
    packed = b"".join(base64.b64decode(text[17:-4]) for text in texts)
    file = zlib.decompress(packed, wbits=-15).decode()
    assert read_file(file, PHONE).lines == [row["text"] for row in rows(page)]
