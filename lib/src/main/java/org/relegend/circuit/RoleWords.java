package org.relegend.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The words that people use for the roles of pins, from roles.csv. */
final class RoleWords {
  private static final Map<String, List<String>> ALIASES = read();

  private RoleWords() {}

  /**
   * Each word for one of these roles to that role. A role's own name goes before any alias, and an
   * alias that two of the roles share is none.
   */
  static Map<String, String> of(Set<String> roles) {
    Map<String, String> words = new HashMap<>();
    Set<String> shared = new HashSet<>();
    for (String role : roles) {
      for (String alias : ALIASES.getOrDefault(role, List.of())) {
        String other = words.put(alias, role);
        if (other != null && !other.equals(role)) {
          shared.add(alias);
        }
      }
    }
    words.keySet().removeAll(shared);
    roles.forEach(role -> words.put(role.toLowerCase(Locale.ROOT), role));
    return words;
  }

  private static Map<String, List<String>> read() {
    Map<String, List<String>> aliases = new HashMap<>();
    for (KindTable.Row row : KindTable.resource("roles.csv", "role", "aliases")) {
      List<String> words = aliases.computeIfAbsent(row.cell("role"), role -> new ArrayList<>());
      row.words("aliases", ';').forEach(word -> words.add(word.toLowerCase(Locale.ROOT)));
    }
    return aliases;
  }
}
