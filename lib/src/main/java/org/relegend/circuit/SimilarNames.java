package org.relegend.circuit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.TreeSet;
import org.relegend.map.NameRules;

/** Finds the names that are spelt nearly like another: by the edits between them. */
final class SimilarNames {
  private static final int AT_MOST = 5;

  private SimilarNames() {}

  /** Up to five names no more than two edits away, fewest edits first; case doesn't count. */
  static List<String> of(String text, Collection<String> names) {
    if (text.length() > NameRules.MAX_LENGTH) {
      return new ArrayList<>();
    }
    int limit = text.length() < 4 ? 1 : 2;
    TreeMap<Integer, TreeSet<String>> near = new TreeMap<>();
    for (String name : names) {
      int edits = edits(text.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT), limit);
      if (edits <= limit) {
        near.computeIfAbsent(edits, key -> new TreeSet<>(NameRules.NATURAL)).add(name);
      }
    }
    List<String> found = new ArrayList<>();
    near.values().forEach(found::addAll);
    return new ArrayList<>(found.subList(0, Math.min(AT_MOST, found.size())));
  }

  /** Letters to insert, delete or change (Levenshtein); more than the limit where that is sure. */
  private static int edits(String a, String b, int limit) {
    if (Math.abs(a.length() - b.length()) > limit) {
      return limit + 1;
    }
    int[] last = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(last[j - 1] + change, 1 + Math.min(last[j], row[j - 1]));
      }
      last = row;
    }
    return last[b.length()];
  }
}
