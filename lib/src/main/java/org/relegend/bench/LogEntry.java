package org.relegend.bench;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.relegend.map.FixedWords;
import org.relegend.map.Keyed;
import org.relegend.map.Subject;
import org.relegend.map.TextRules;

/**
 * One line of the log: what was done or noticed, when.
 *
 * @param about what it concerns; an area that was re-soldered in one go is one entry with many
 */
public record LogEntry(
    EntryId id, Kind kind, List<Subject> about, String text, String author, Instant at)
    implements Keyed<EntryId> {
  /** What sort of event. */
  public enum Kind {
    NOTE,
    /** Something was repaired: readings before and after it are apart. */
    REPAIR,
    /** Something was set: which, to what. */
    ADJUSTMENT,
    /** Touching, pressing or cooling a place changed something: a clue to an area, no more. */
    TOUCH,
    /** The meter itself was checked: leads, range, clip. */
    METER,
    /** What the owner or the next technician should watch. */
    WATCH;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads such a word.
     *
     * @throws IllegalArgumentException where it is none of them
     */
    public static Kind of(String word) {
      return FixedWords.find(values(), Kind::word, "kind of log entry", word);
    }
  }

  public LogEntry {
    about = List.copyOf(about);
    TextRules.note(text);
    TextRules.line("author", author);
    at = Timestamps.checked(at);
  }

  @Override
  public EntryId key() {
    return id;
  }
}
