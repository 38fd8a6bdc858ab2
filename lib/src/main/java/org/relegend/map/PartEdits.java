package org.relegend.map;

import static org.relegend.map.References.keep;

import java.util.List;

/** Edits of parts, channels, matings, twins and where those differ. */
public final class PartEdits {
  private PartEdits() {}

  /** Adds a part or changes what is known of it. A new part's board is added with it if need be. */
  public record PutPart(Part part) implements Edit {
    @Override
    public String label(BoardMap map) {
      return (map.parts().has(part.id()) ? "Change " : "Add ") + part.designator();
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      BoardMap result =
          map.boards().has(part.board())
              ? map
              : map.withBoards(map.boards().with(Board.named(part.board())));
      return result.withParts(result.parts().with(part));
    }
  }

  /** Removes a part with its pins, placements, twins, matings, discrepancies and deviations. */
  public record RemovePart(PartId part) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Remove " + map.nameOf(part);
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      BoardMap rest = References.without(map, this::isPartOfIt);
      return rest.withParts(rest.parts().without(part))
          .withMatings(keep(rest.matings(), m -> !m.a().equals(part) && !m.b().equals(part)))
          .withNets(
              rest.nets()
                  .withAll(rest.nets().stream().filter(this::joins).map(this::cut).toList()));
    }

    private boolean isPartOfIt(Subject subject) {
      return subject instanceof Subject.OfPart s && s.part().equals(part)
          || subject instanceof Subject.OfSection t && t.part().equals(part)
          || subject instanceof Subject.OfPin u && u.pin().part().equals(part);
    }

    private boolean joins(Net net) {
      return net.members().stream().anyMatch(member -> member.pin().part().equals(part));
    }

    private Net cut(Net net) {
      return net.withMembers(
          net.members().stream().filter(member -> !member.pin().part().equals(part)).toList());
    }
  }

  /** Adds a channel or changes what is known of it. */
  public record PutChannel(Channel channel) implements Edit {
    @Override
    public String label(BoardMap map) {
      return (map.channels().has(channel.name()) ? "Change channel " : "Add channel ")
          + channel.name();
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withChannels(map.channels().with(channel));
    }
  }

  /** Removes a channel that no part and no net is in any more. */
  public record RemoveChannel(String channel) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Remove channel " + channel;
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      long parts = map.parts().stream().filter(part -> part.channel().equals(channel)).count();
      long nets = map.nets().stream().filter(net -> net.channel().equals(channel)).count();
      if (parts + nets > 0) {
        throw new EditRefusedException(
            "Channel %s still has %d parts and %d nets: take those out first."
                .formatted(channel, parts, nets));
      }
      return map.withChannels(map.channels().without(channel));
    }
  }

  /** Says that two connectors are plugged together. */
  public record PutMating(Mating mating) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Plug " + map.nameOf(mating.a()) + " into " + map.nameOf(mating.b());
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      require(map, mating.a());
      require(map, mating.b());
      return map.withMatings(map.matings().with(mating));
    }
  }

  /** Says that two connectors are not plugged together. */
  public record RemoveMating(Mating mating) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Unplug " + map.nameOf(mating.a()) + " from " + map.nameOf(mating.b());
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withMatings(map.matings().without(mating));
    }
  }

  /** Says that two parts, sections, pins or nets are twins; a known pair gains the evidence. */
  public record DeclareTwin(TwinPair pair) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Twins " + map.nameOf(pair.a()) + " = " + map.nameOf(pair.b());
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      requireKnown(map, pair.a());
      requireKnown(map, pair.b());
      TwinPair whole =
          map.twins()
              .find(pair.key())
              .map(
                  known ->
                      new TwinPair(
                          pair.a(), pair.b(), Evidences.union(known.evidence(), pair.evidence())))
              .orElse(pair);
      return map.withTwins(map.twins().with(whole));
    }
  }

  /** Says that two are no twins. */
  public record RemoveTwin(TwinPair.Key pair) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "No twins: " + map.nameOf(pair.a()) + ", " + map.nameOf(pair.b());
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withTwins(map.twins().without(pair));
    }
  }

  /** Says why two channels differ there. */
  public record PutDeviation(Deviation deviation) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Mark as " + deviation.cause().word() + ": " + names(map, deviation.at());
    }

    @Override
    public BoardMap applyTo(BoardMap map) throws EditRefusedException {
      for (Subject subject : deviation.at()) {
        requireKnown(map, subject);
      }
      return map.withDeviations(map.deviations().with(deviation));
    }
  }

  /** Takes back what was said of why two channels differ. */
  public record RemoveDeviation(Deviation.Key deviation) implements Edit {
    @Override
    public String label(BoardMap map) {
      return "Drop the mark on " + names(map, deviation.at());
    }

    @Override
    public BoardMap applyTo(BoardMap map) {
      return map.withDeviations(map.deviations().without(deviation));
    }
  }

  private static String names(BoardMap map, List<Subject> subjects) {
    return String.join(", ", subjects.stream().map(map::nameOf).toList());
  }

  static Part require(BoardMap map, PartId part) throws EditRefusedException {
    return map.part(part)
        .orElseThrow(
            () -> new EditRefusedException("The map has no part " + part + ": add it first."));
  }

  static void requireKnown(BoardMap map, Subject subject) throws EditRefusedException {
    if (subject instanceof Subject.OfPart s) {
      require(map, s.part());
    } else if (subject instanceof Subject.OfSection s) {
      if (require(map, s.part()).section(s.section()).isEmpty()) {
        throw new EditRefusedException(
            "Part %s has no section %s.".formatted(map.nameOf(s.part()), s.section()));
      }
    } else if (subject instanceof Subject.OfPin s) {
      requirePin(map, s.pin());
    } else if (subject instanceof Subject.OfNet s && map.net(s.net()).isEmpty()) {
      throw new EditRefusedException("The map has no net " + s.net() + ".");
    }
  }

  static void requirePin(BoardMap map, PinRef pin) throws EditRefusedException {
    if (require(map, pin.part()).pin(pin.pin()).isEmpty()) {
      throw new EditRefusedException(
          "Part %s has no pin %s.".formatted(map.nameOf(pin.part()), pin.pin()));
    }
  }
}
