package org.relegend.bench;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.relegend.map.FixedWords;
import org.relegend.map.Keyed;
import org.relegend.map.PartId;
import org.relegend.map.TextRules;

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
      return FixedWords.find(values(), Result::word, "result of a hypothesis", word);
    }
  }

  public Hypothesis {
    parts = List.copyOf(parts);
    TextRules.note(what);
    TextRules.note(why);
    TextRules.note(test);
    TextRules.note(outcome);
    TextRules.line("author", author);
    at = Timestamps.checked(at);
  }

  @Override
  public EntryId key() {
    return id;
  }

  public Hypothesis with(Result changed, String text) {
    return new Hypothesis(id, parts, what, why, test, changed, text, author, at);
  }
}
