package org.relegend.map;

import java.util.List;
import java.util.Optional;

/** Edits of what is joined that say more than a net put or removed would. */
public final class NetEdits {
  private NetEdits() {}

  /** Joins pins to a net, which is made if need be. Refused where a pin is on another net. */
  public record JoinPins(NetId net, List<Net.Member> members) implements Edit {
    public JoinPins {
      members = List.copyOf(members);
    }

    @Override
    public String label(BoardMap map) {
      String name = map.nameOf(Subject.of(net));
      return members.size() == 1
          ? "Join %s to %s".formatted(map.nameOf(Subject.of(members.get(0).pin())), name)
          : "Join %d pins to %s".formatted(members.size(), name);
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      Net joined = map.net(net).orElseGet(() -> Net.named(net));
      for (Net.Member member : members) {
        Requirements.pin(map, member.pin());
        Optional<Net> other = otherNetOf(map, member.pin(), net);
        if (other.isPresent()) {
          throw new EditRefusedException(
              "Pin %s is on net %s already: join the two nets, move the pin, or leave it."
                  .formatted(map.nameOf(Subject.of(member.pin())), other.get().name()));
        }
        joined =
            joined.withMember(
                joined.member(member.pin()).map(known -> union(known, member)).orElse(member));
      }
      return map.with(MapTables.NETS, map.nets().with(joined));
    }
  }

  /** Takes a pin off whatever net it is on and joins it to this one, which is made if need be. */
  public record MovePin(PinRef pin, NetId to, Attestation evidence) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Move %s to %s".formatted(map.nameOf(Subject.of(pin)), map.nameOf(Subject.of(to)));
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      Requirements.pin(map, pin);
      List<Net> cut =
          map.nets().stream()
              .filter(net -> net.has(pin) && !net.id().equals(to))
              .map(net -> net.without(pin))
              .toList();
      Net joined = map.net(to).orElseGet(() -> Net.named(to));
      return map.with(
          MapTables.NETS,
          map.nets().withAll(cut).with(joined.withMember(new Net.Member(pin, List.of(evidence)))));
    }
  }

  /** Takes a pin off a net. */
  public record DetachPin(NetId net, PinRef pin) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Take %s off %s".formatted(map.nameOf(Subject.of(pin)), map.nameOf(Subject.of(net)));
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.net(net)
          .map(found -> map.with(MapTables.NETS, map.nets().with(found.without(pin))))
          .orElse(map);
    }
  }

  /** Makes one net of two; what was said of the one that goes is said of the other from now on. */
  public record MergeNets(NetId kept, NetId gone) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Join nets %s and %s"
          .formatted(map.nameOf(Subject.of(kept)), map.nameOf(Subject.of(gone)));
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      Net a = Requirements.net(map, kept);
      Net b = Requirements.net(map, gone);
      if (kept.equals(gone)) {
        return map;
      }
      for (Net.Member member : b.members()) {
        a = a.withMember(a.member(member.pin()).map(known -> union(known, member)).orElse(member));
      }
      a = withWhatIsKnownOf(a, b);
      BoardMap relabelled = relabel(map);
      BoardMap rest = relabelled.without(EntryRef.to(gone));
      return rest.with(MapTables.NETS, rest.nets().without(gone).with(a));
    }

    /** A potential, above all, must not get lost: hazards are computed from it. */
    private static Net withWhatIsKnownOf(Net a, Net b) {
      String both = a.note() + "\n" + b.note();
      boolean tellsMore = !b.note().isEmpty() && !a.note().contains(b.note());
      return a.withChannel(a.channel().isEmpty() ? b.channel() : a.channel())
          .withPotential(a.potential().equals(Potential.UNKNOWN) ? b.potential() : a.potential())
          .withNote(tellsMore && both.length() <= TextRules.MAX_NOTE ? both.strip() : a.note());
    }

    private BoardMap relabel(BoardMap map) {
      BoardMap result = map;
      for (Placement placement : map.placements()) {
        if (placement.subject().equals(Subject.of(gone))) {
          int ordinal = 1;
          Subject to = Subject.of(kept);
          while (result.placements().has(new Placement.Key(placement.picture(), to, ordinal))) {
            ordinal++;
          }
          Placement moved = placement.of(placement.picture(), to, ordinal);
          result = result.with(MapTables.PLACEMENTS, result.placements().with(moved));
        }
      }
      for (DrawingDiscrepancy discrepancy : map.discrepancies()) {
        if (discrepancy.aspect() == DrawingDiscrepancy.Aspect.NET
            && discrepancy.drawn().equals(gone.text())) {
          DrawingDiscrepancy renamed =
              new DrawingDiscrepancy(
                  discrepancy.subject(),
                  discrepancy.aspect(),
                  kept.text(),
                  discrepancy.evidence(),
                  discrepancy.note());
          result = result.with(MapTables.DISCREPANCIES, result.discrepancies().with(renamed));
        }
      }
      return result;
    }
  }

  private static Net.Member union(Net.Member known, Net.Member added) {
    return new Net.Member(known.pin(), AttestationMerge.union(known.evidence(), added.evidence()));
  }

  private static Optional<Net> otherNetOf(BoardMap map, PinRef pin, NetId net) {
    return map.nets().stream()
        .filter(other -> !other.id().equals(net) && other.has(pin))
        .findFirst();
  }
}
