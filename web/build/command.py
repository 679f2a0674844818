"""The command line: set up, build, serve; every failure ends in one sentence and a way on."""

import argparse
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

from web.build.bundle import refuse_place, write_bundle
from web.build.contract import write_contract
from web.build.environment import venv_python
from web.build.server import DEFAULT_PORT, open_server, run_server
from web.build.site import build
from web.build.steps import Steps
from web.build.trouble import Trouble, trouble_from_os_error

PHONE_HINT = """\
On a phone, one of these:
* any https web space: "python3 -m web bundle" writes a zip for it, with a page that says how;
* a web server of the firm whose certificate the phones trust, in the same way;
* an Android phone on a cable, USB debugging switched on, adb (Android's platform tools) on this
  computer: run "adb reverse tcp:{port} tcp:{port}" and open http://localhost:{port}/ on the phone.
  The app stays there when the cable is gone.
Plain http over the wireless network does not do: no browser keeps such a page for use offline."""


def main(arguments: Sequence[str]) -> int:
    """Exit status of ``python3 -m web`` with these arguments."""
    wanted = _parser().parse_args(arguments)
    try:
        return int(wanted.action(wanted))
    except Trouble as trouble:
        _say(trouble)
    except OSError as error:
        _say(trouble_from_os_error(error))
    except KeyboardInterrupt:
        sys.stderr.write("\nStopped. What is done already is kept.\n")
        return 130
    return 1


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python3 -m web", description="Builds the app and serves it on this computer."
    )
    parser.set_defaults(action=_serve)
    parser.add_argument("--port", type=_port, default=DEFAULT_PORT, help="default %(default)s")
    parser.add_argument("--no-open", action="store_true", help="do not open a browser")
    commands = parser.add_subparsers(title="instead of serving")
    building = commands.add_parser("build", help="only build web/dist, for any static web host")
    building.set_defaults(action=_build)
    bundling = commands.add_parser("bundle", help="build, and write a zip for a static web host")
    bundling.add_argument(
        "-o", "--output", type=Path, default=Path("pailwright-site.zip"), help="default %(default)s"
    )
    bundling.set_defaults(action=_bundle)
    contract = commands.add_parser("contract", help="write the files generated from shared/")
    contract.set_defaults(action=_contract)
    return parser


def _port(text: str) -> int:
    if not text.isascii() or not text.isdigit() or not 1 <= int(text) <= 65535:
        raise argparse.ArgumentTypeError(f"{text!r} is not a port from 1 to 65535")
    return int(text)


def _serve(wanted: argparse.Namespace) -> int:
    # Asked for first: a port that is taken is said at once, not after the whole build.
    with open_server(wanted.port) as server:
        server.folder = build(Steps())
        address = f"http://localhost:{wanted.port}/"
        print(f"Pailwright is at {address} (Ctrl+C stops it)")
        print(PHONE_HINT.format(port=wanted.port), flush=True)
        if sys.stdout.isatty():
            print("The same address as a code, for the phone on the cable:", flush=True)
            _print_square_code(address)
        return run_server(server, None if wanted.no_open else address)


def _print_square_code(address: str) -> None:
    drawn = "import segno, sys; segno.make(sys.argv[1]).terminal(border=2, compact=True)"
    # Where it cannot be drawn the address is typed.
    subprocess.run([venv_python(), "-c", drawn, address], stdin=subprocess.DEVNULL, check=False)


def _bundle(wanted: argparse.Namespace) -> int:
    # Looked at first: a place that cannot be written to is said at once, not after the build.
    refuse_place(wanted.output)
    build(Steps())
    size = write_bundle(wanted.output)
    print(f"Wrote {wanted.output} ({size / 1e6:.1f} MB); how-to-host.html in it says what to do")
    return 0


def _build(_: argparse.Namespace) -> int:
    folder = build(Steps())
    print(f"Built {folder}")
    return 0


def _contract(_: argparse.Namespace) -> int:
    changed = write_contract(Steps())
    print("\n".join(f"Wrote {name}" for name in changed) or "Nothing to write: all is as it was.")
    return 0


def _say(trouble: Trouble) -> None:
    sys.stdout.flush()
    sys.stderr.write(f"{trouble.sentence}\nWay on: {trouble.way_on}\n")
