"""A Debian tree to build in, so that the bytes made do not depend on the machine around it.

Public names: `Debian`, `debian`.
"""

import shutil
import subprocess
from pathlib import Path

__all__ = ["Debian", "debian"]

SUITE = "forky"
KEYRING = "/usr/share/keyrings/debian-archive-keyring.gpg"
RECIPE = "sid"
"""Older debootstraps know no forky; every suite since uses the same script."""


class Debian:
    """A Debian tree to run commands in."""

    def __init__(self, root: Path) -> None:
        self.root = root

    def run(self, *command: str, cwd: str = "/", **environment: str) -> str:
        """Run a command in the tree and return what it prints; a failure ends the build."""
        settings = {"PATH": "/usr/sbin:/usr/bin:/sbin:/bin", "HOME": "/root", "LC_ALL": "C.UTF-8", **environment}
        line = ["/usr/sbin/chroot", str(self.root), "/usr/bin/env", "-C", cwd, *command]
        done = subprocess.run(line, env=settings, stdout=subprocess.PIPE, text=True, check=False)  # noqa: S603
        if done.returncode != 0:
            raise SystemExit(f"failed in the Debian tree: {' '.join(command)}\n{done.stdout[-2000:]}")
        return done.stdout

    def install(self, packages: list[str]) -> None:
        """Install `name=version` packages; fails when the mirror has moved on from a version."""
        # the testing suite is not always republished before its date runs out; signatures are still checked
        (self.root / "etc/apt/apt.conf.d/99valid").write_text('Acquire::Check-Valid-Until "false";\n')
        self.run("apt-get", "update", "-qq")
        options = ["-y", "-qq", "--no-install-recommends"]
        self.run("apt-get", "install", *options, *packages, DEBIAN_FRONTEND="noninteractive")
        names = [package.split("=")[0] for package in packages]
        found = self.run("dpkg-query", "-W", "-f", "${binary:Package}=${Version}\\n", *names)
        installed = {line.replace(":amd64", "") for line in found.split()}
        if installed != set(packages):
            raise SystemExit(f"debian-packages.txt: expected {sorted(packages)}, installed {sorted(installed)}")


def debian(root: Path, packages: list[str]) -> Debian:
    """A fresh tree at `root` with these packages, from the archive that this machine's apt uses."""
    shutil.rmtree(root, ignore_errors=True)
    options = ["--arch=amd64", "--variant=minbase", f"--keyring={KEYRING}"]
    command = ["/usr/sbin/debootstrap", *options, SUITE, str(root), _archive(), RECIPE]
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL)  # noqa: S603
    tree = Debian(root)
    tree.install(packages)
    return tree


def _archive() -> str:
    """The address of Debian's archive as apt on this machine has it."""
    wanted = ["--format", "$(REPO_URI) $(ORIGIN) $(LABEL)", "Created-By: Packages"]
    listed = subprocess.run(["/usr/bin/apt-get", "indextargets", *wanted], capture_output=True, text=True, check=True)  # noqa: S603
    found = [line.split(" ", 1)[0] for line in listed.stdout.splitlines() if line.endswith(" Debian Debian")]
    if not found:
        raise SystemExit("apt's sources on this machine name no Debian archive; run apt-get update first")
    return found[0]
