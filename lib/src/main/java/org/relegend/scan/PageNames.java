package org.relegend.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.relegend.circuit.ClassLetters;
import org.relegend.map.Designator;
import org.relegend.marking.ComponentValues;
import org.relegend.marking.MarkingReadings;

/** Finds designators in a page's own text, and the values written near them. */
public final class PageNames {
  /** How far a value may stand from its designator, in letter sizes between their middles. */
  private static final double NEAR = 6;

  private static final int MOST_VALUES = 3;

  /** Class letters, a number, perhaps a letter for one of a group (R17A). */
  private static final Pattern DESIGNATOR = Pattern.compile("([A-Z]{1,3})([0-9]{1,4})([A-Z]?)");

  private PageNames() {}

  /**
   * A designator found on the page.
   *
   * @param values texts near it that read as a component's value, nearest first
   */
  public record Found(Designator designator, PageWord word, List<String> values) {
    public Found {
      values = List.copyOf(values);
    }
  }

  /** The designators among these words, in the order of the words. */
  public static List<Found> among(List<PageWord> words) {
    List<PageWord> names = words.stream().filter(PageNames::isDesignator).toList();
    List<PageWord> values = words.stream().filter(PageNames::isValue).toList();
    List<Found> found = new ArrayList<>();
    for (PageWord name : names) {
      found.add(new Found(new Designator(name.text()), name, near(name, names, values)));
    }
    return found;
  }

  private static List<String> near(PageWord name, List<PageWord> names, List<PageWord> values) {
    return values.stream()
        .filter(value -> distance(name, value) <= NEAR * name.size())
        .filter(
            value ->
                names.stream().noneMatch(other -> distance(other, value) < distance(name, value)))
        .sorted(Comparator.comparingDouble(value -> distance(name, value)))
        .map(PageWord::text)
        .limit(MOST_VALUES)
        .toList();
  }

  private static double distance(PageWord a, PageWord b) {
    return a.box().centre().distance(b.box().centre());
  }

  /** Letters of a known class only: "FIG2" is no part. */
  private static boolean isDesignator(PageWord word) {
    Matcher matcher = DESIGNATOR.matcher(word.text());
    return matcher.matches() && !ClassLetters.meanings(matcher.group(1)).isEmpty();
  }

  private static boolean isValue(PageWord word) {
    return !isDesignator(word)
        && word.text().length() > 1
        && ComponentValues.read(word.text()).outcome() == MarkingReadings.Outcome.READ;
  }
}
