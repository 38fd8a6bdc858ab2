package org.relegend.bench;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.relegend.map.Keyed;
import org.relegend.map.PartId;
import org.relegend.map.Texts;
import org.relegend.map.Words;

/**
 * What somebody thinks is wrong, and what became of it. A disproved one stays.
 *
 * @param parts that it blames
 * @param what is wrong with them: "leaks"
 * @param why it was thought so
 * @param test what would tell
 * @param outcome what the test gave; empty while it wasn't made
 */
public record Hypothesis(
    EntryId id,
    List<PartId> parts,
    String what,
    String why,
    String test,
    Result result,
    String outcome,
    String author,
    Instant at)
    implements Keyed<EntryId> {
  /** How it stands. A fault that was found need not be the cause of the complaint. */
  public enum Result {
    OPEN,
    DISPROVED,
    /** A true fault, perhaps a secondary one. */
    FOUND,
    /** What made the complaint. */
    CAUSE;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads such a word.
     *
     * @throws IllegalArgumentException where it is none of them
     */
    public static Result of(String word) {
      return Words.find(values(), Result::word, "result of a hypothesis", word);
    }
  }

  public Hypothesis {
    parts = List.copyOf(parts);
    Texts.note(what);
    Texts.note(why);
    Texts.note(test);
    Texts.note(outcome);
    Texts.line("author", author);
    at = Moments.checked(at);
  }

  @Override
  public EntryId key() {
    return id;
  }

  public Hypothesis with(Result changed, String told) {
    return new Hypothesis(id, parts, what, why, test, changed, told, author, at);
  }
}
