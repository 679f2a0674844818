"""Installs what tests need from the system's packages, where it may."""

import os
import shutil
import subprocess

LIMIT_S = 600


def install_with_apt(*packages: str) -> None:
    """Does nothing on a system without apt."""
    apt = shutil.which("apt-get")
    if apt is None:
        return
    is_root = hasattr(os, "geteuid") and os.geteuid() == 0
    start = [apt] if is_root else ["sudo", "-n", apt]
    try_command([*start, "update", "-qq"])
    try_command([*start, "install", "-y", "-qq", "--no-install-recommends", *packages])


def try_command(command: list[str]) -> None:
    """Runs a command and prints what went wrong; whether it helped is seen by what is there."""
    print(f"  {' '.join(command)}", flush=True)
    environment = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    try:
        subprocess.run(
            command, env=environment, stdin=subprocess.DEVNULL, timeout=LIMIT_S, check=False
        )
    except (OSError, subprocess.TimeoutExpired) as error:
        print(f"  {error}", flush=True)
