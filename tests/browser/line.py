"""A line between browser and server that can be cut, so that every part of the browser is without network."""

import contextlib
import socket
import threading
from collections.abc import Iterator
from urllib.parse import urlsplit


class Line:
    """Passes bytes on between a port of its own and the server, until it is cut."""

    def __init__(self, address: str) -> None:
        target = urlsplit(address)
        self._target = (target.hostname, target.port)
        self._open: set[socket.socket] = set()
        self.is_cut = False
        self._listening = socket.create_server(("localhost", 0))
        self.url = f"http://localhost:{self._listening.getsockname()[1]}"
        threading.Thread(target=self._accept, daemon=True).start()

    def cut(self) -> None:
        self.is_cut = True
        for end in list(self._open):
            with contextlib.suppress(OSError):
                end.shutdown(socket.SHUT_RDWR)

    def mend(self) -> None:
        self.is_cut = False

    def close(self) -> None:
        self.cut()
        self._listening.close()

    def _accept(self) -> None:
        while True:
            try:
                near, _ = self._listening.accept()
            except OSError:
                return
            if self.is_cut:
                near.close()
                continue
            try:
                far = socket.create_connection(self._target)
            except OSError:
                near.close()
                continue
            self._open |= {near, far}
            for one, other in ((near, far), (far, near)):
                threading.Thread(target=self._pass_on, args=(one, other), daemon=True).start()

    def _pass_on(self, one: socket.socket, other: socket.socket) -> None:
        with contextlib.suppress(OSError):
            while data := one.recv(65536):
                other.sendall(data)
        for end in (one, other):
            self._open.discard(end)
            with contextlib.suppress(OSError):
                end.shutdown(socket.SHUT_RDWR)


@contextlib.contextmanager
def line_to(address: str) -> Iterator[Line]:
    line = Line(address)
    try:
        yield line
    finally:
        line.close()
