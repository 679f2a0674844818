"""Archives that open to a thousand times their size, or hold a hundred thousand names."""

import gzip
import io
import zipfile

UNPACKED = 268_000_000
MEMBERS = 100_000
AT_ONCE = 1_000_000


def zip_bomb() -> bytes:
    """One member that opens to a thousand times its size."""
    out = io.BytesIO()
    with (
        zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive,
        archive.open("log.txt", "w") as member,
    ):
        for _ in range(UNPACKED // AT_ONCE):
            member.write(b"0" * AT_ONCE)
    return out.getvalue()


def gzip_bomb() -> bytes:
    """The same as one stream, beginning as a log does once it is unpacked."""
    out = io.BytesIO()
    with gzip.open(out, "wb") as stream:
        stream.write(b'{"pailwright":"log","format":1,"lines":1,"logs":[]}\n')
        for _ in range(UNPACKED // AT_ONCE):
            stream.write(b"0" * AT_ONCE)
    return out.getvalue()


def many_members() -> bytes:
    """Names that lead out of the folder, so many that their list alone is megabytes."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        for number in range(MEMBERS):
            # By the clock of the run some minutes would be plain text and others not, which takes
            # half as much memory again.
            member = zipfile.ZipInfo(f"../../up {number}", (2026, 11, 25, 6, 4, 0))
            archive.writestr(member, "")
    return out.getvalue()
