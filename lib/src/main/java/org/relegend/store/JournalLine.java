package org.relegend.store;

import static org.relegend.store.Codecs.maybe;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.relegend.map.BoardMap;
import org.relegend.map.Edit;
import org.relegend.map.EditHistory;
import org.relegend.map.EditRefusedException;

/** One line of the recovery journal: when, and one thing that was done. */
record JournalLine(Instant at, Step step) {
  /** What was done. */
  sealed interface Step {
    /** The history with this step taken: the same one, or a new one where that is left behind. */
    EditHistory takenOn(EditHistory history) throws EditRefusedException;
  }

  /** An edit was made. */
  record Made(Edit edit) implements Step {
    @Override
    public EditHistory takenOn(EditHistory history) throws EditRefusedException {
      history.apply(edit);
      return history;
    }
  }

  /** The last edit was taken back, or made again. */
  enum Turn implements Step {
    UNDO,
    REDO;

    @Override
    public EditHistory takenOn(EditHistory history) {
      Optional<Edit> turned = this == UNDO ? history.undo() : history.redo();
      return turned.isPresent() ? history : new EditHistory(history.current());
    }
  }

  /** The map changed in a way that no edit of this journal tells. */
  record Changed(MapChange change) implements Step {
    static Changed between(BoardMap before, BoardMap after) {
      return new Changed(MapChange.between(before, after));
    }

    @Override
    public EditHistory takenOn(EditHistory history) {
      return new EditHistory(change.applyTo(history.current()));
    }
  }

  /** The map file is about to be written anew and will have this digest. */
  record SaveBegun(String digest) implements Step {
    @Override
    public EditHistory takenOn(EditHistory history) {
      return history;
    }
  }

  static final Codec<JournalLine> CODEC = codec();

  JournalLine {
    at = at.truncatedTo(ChronoUnit.SECONDS);
  }

  private static Codec<JournalLine> codec() {
    JsonShape<JournalLine> s = new JsonShape<>();
    var at = s.required("at", MapShapes.INSTANT, JournalLine::at);
    var edit =
        s.optional("edit", maybe(EditShapes.EDIT), Optional.empty(), part(Made.class, Made::edit));
    var turn =
        s.optional(
            "turn",
            maybe(Codecs.word(Turn.values(), JournalLine::word, JournalLine::turn)),
            Optional.empty(),
            part(Turn.class, Function.identity()));
    var change =
        s.optional(
            "change",
            maybe(MapChange.CODEC),
            Optional.empty(),
            part(Changed.class, Changed::change));
    var saving =
        s.optional(
            "saving",
            maybe(Codecs.TEXT),
            Optional.empty(),
            part(SaveBegun.class, SaveBegun::digest));
    return s.madeBy(
        v -> {
          List<Step> steps =
              Stream.of(
                      v.get(edit).<Step>map(Made::new),
                      v.get(turn).<Step>map(Function.identity()),
                      v.get(change).<Step>map(Changed::new),
                      v.get(saving).<Step>map(SaveBegun::new))
                  .flatMap(Optional::stream)
                  .toList();
          if (steps.size() != 1) {
            throw new IllegalArgumentException("a line of the journal tells one thing");
          }
          return new JournalLine(v.get(at), steps.get(0));
        });
  }

  private static <S extends Step, V> Function<JournalLine, Optional<V>> part(
      Class<S> type, Function<S, V> part) {
    return line -> Optional.of(line.step()).filter(type::isInstance).map(type::cast).map(part);
  }

  private static String word(Turn turn) {
    return turn == Turn.UNDO ? "undo" : "redo";
  }

  private static Turn turn(String word) {
    throw new IllegalArgumentException("the history turns by undo or redo, not by " + word);
  }
}
