"""A pair as the answer gives it: joint by joint where it is joined, or what keeps its ports apart."""

from ..catalogue.mating import ConnectorEnd, meeting
from .adapters import Stock, adapter_name
from .chain_quality import chain_quality, margin_or_none, return_loss_of
from .chains import AdapterChain, joints_of, mated_loss_db
from .joint_figures import JointFigures
from .obstacle import obstacle
from .requests import KitRequest
from .required_pairs import RequiredPair
from .results import ChainJoint, JoinedBy, PairResult, Reason, UsedAdapter
from .smallest_kits import SmallestKit
from .verdict import joined_sentence

__all__ = ["pair_result"]


def pair_result(
    request: KitRequest,
    numbers: list[int],
    names: list[str],
    pair: RequiredPair,
    figures: JointFigures,
    smallest: SmallestKit,
    stock: Stock,
) -> PairResult:
    """How the pair of ports with these numbers and names is joined with the adapters of the kit, and without.

    `stock` is everything that could be used, to say why nothing joins them.
    """
    chain, owned_chain = smallest.chain(pair), smallest.owned_chain(pair)
    trap = meeting(pair.first, pair.second)
    reason: Reason
    if chain:
        reason, cause, sentence = "", "", joined_sentence(chain)
    else:
        reason, cause, sentence = obstacle(request, pair, figures, stock)
    return PairResult(
        ports=numbers,
        names=names,
        frequency_hz=pair.duty.frequency_hz,
        power_w=pair.duty.power_w,
        joined=_joined_by(chain, pair, figures) if chain else None,
        joined_by_owned=_joined_by(owned_chain, pair, figures) if owned_chain else None,
        reason=reason,
        cause=cause,
        sentence=sentence,
        trap=trap.sentence if trap.trap else "",
    )


def _joined_by(chain: AdapterChain, pair: RequiredPair, figures: JointFigures) -> JoinedBy:
    joints = [_joint(first, second, figures) for first, second in joints_of(pair.first, pair.second, chain)]
    quality = chain_quality(pair, chain, figures)
    return JoinedBy(
        adapters=[UsedAdapter(adapter_name(adapter), *adapter[0], *adapter[1]) for adapter in chain.adapters],
        joints=joints,
        margin_db=margin_or_none(quality.margin_db),
        return_loss_db=quality.return_loss_db,
        loss_db=chain.loss_db,
    )


def _joint(first: ConnectorEnd, second: ConnectorEnd, figures: JointFigures) -> ChainJoint:
    mating = meeting(first, second)
    families = dict.fromkeys((first.family, second.family))
    notes = [mating.sentence] if mating.sentence else []
    return ChainJoint(
        *first,
        *second,
        margin_db=margin_or_none(min(figures.margin_db[family] for family in families)),
        return_loss_db=return_loss_of(max(figures.vswr[family] for family in families)),
        loss_db=mated_loss_db(figures, first, second),
        notes=notes + [note for family in families for note in figures.notes[family]],
    )
