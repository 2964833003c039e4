"""What a caller may ask about a whole line."""

from typing import Annotated

from msgspec import Meta, Struct, field

from ..feedline.elements import FeedlineRequest
from ..physics.scenario import Identifier

__all__ = ["LineRequest", "Preamplifier", "Receiver"]

NoiseFigure = Annotated[float, Meta(ge=0, le=60, extra={"unit": "dB"})]


class Preamplifier(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """An amplifier in the receive path, on the antenna side of one element."""

    before_element: Annotated[int, Meta(ge=0, le=59, description="It stands on the antenna side of this element")]
    gain_db: Annotated[float, Meta(ge=0, le=60, extra={"unit": "dB"})] = 15.0
    noise_figure_db: NoiseFigure = 1.0


class Receiver(Struct, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """The receiver at the shack end, what the antenna looks at, and the noise around it."""

    noise_figure_db: NoiseFigure = 6.0
    environment: Annotated[Identifier, Meta(description="Noise around the antenna, an id of the catalogue")] = "rural"
    antenna_view: Annotated[
        Identifier,
        Meta(description="Where the antenna points from 30 MHz up, an id of the catalogue: horizon, sky or cold_sky"),
    ] = "horizon"
    elevation_deg: Annotated[
        float, Meta(ge=0, le=90, description="Of an antenna that looks at the sky", extra={"unit": "°"})
    ] = 30.0
    antenna_temperature_k: (
        Annotated[
            float,
            Meta(
                ge=1,
                le=1e9,
                description="Noise temperature of the antenna in the band looked at, in place of what it looks at",
                extra={"unit": "K"},
            ),
        ]
        | None
    ) = None
    preamplifier: Preamplifier | None = None


class LineRequest(FeedlineRequest, kw_only=True, forbid_unknown_fields=True, frozen=True):
    """What reaches the antenna, which part is weakest, what it costs on receive and what would help."""

    receiver: Annotated[Receiver, Meta(description="What listens at the shack end")] = field(default_factory=Receiver)
    explain: Annotated[
        Annotated[int, Meta(ge=0, le=59)] | None, Meta(description="Element whose margins are derived step by step")
    ] = None
