package org.relegend.share;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Evidence;
import org.relegend.map.MapTable;
import org.relegend.map.NameRules;
import org.relegend.store.Json;

/**
 * Three versions of one entry, field by field: changed on one side is taken, changed alike on both
 * is taken, else both versions are kept and {@code mine} goes on.
 */
final class FieldMerge {
  private static final String EVIDENCE = "evidence";
  private static final String ISSUE = "issue";
  private static final Json NOTHING = Json.array(List.of());

  /** One field that both sides changed, each in its way; null where a side doesn't have it. */
  record Conflict(String field, @Nullable Json mine, @Nullable Json theirs) {}

  /** The entry that goes on, and what is undecided in it: what belongs together in one list. */
  record Outcome(Json.Obj entry, List<List<Conflict>> differing) {}

  private final boolean asks;
  private final Set<String> claim;
  private final Map<String, String> lists;
  private final Map<String, Json> base;
  private final Map<String, Json> mine;
  private final Map<String, Json> theirs;
  private final Map<String, Json> result;
  private final List<List<Conflict>> differing = new ArrayList<>();

  private FieldMerge(
      MapTable<?, ?> table, boolean asks, Json.Obj base, Json.Obj mine, Json.Obj theirs) {
    this.asks = asks;
    this.claim = table.claim();
    this.lists = table.lists();
    this.base = base.fields();
    this.mine = mine.fields();
    this.theirs = theirs.fields();
    this.result = new LinkedHashMap<>(mine.fields());
  }

  /**
   * Merges one entry.
   *
   * @param base an object without fields where the entry is new on both sides
   */
  static Outcome of(MapTable<?, ?> table, Json.Obj base, Json.Obj mine, Json.Obj theirs) {
    return new FieldMerge(table, false, base, mine, theirs).merged();
  }

  /**
   * As {@link #of}, but a claim that one side alone changed is asked about, and kept until then.
   */
  static Outcome asking(MapTable<?, ?> table, Json.Obj base, Json.Obj mine, Json.Obj theirs) {
    return new FieldMerge(table, true, base, mine, theirs).merged();
  }

  private Outcome merged() {
    Set<String> names = new LinkedHashSet<>(mine.keySet());
    names.addAll(theirs.keySet());
    Set<String> statement = new TreeSet<>(claim);
    if (mine.containsKey(EVIDENCE) || theirs.containsKey(EVIDENCE)) {
      statement.add(EVIDENCE);
    }
    names.removeAll(statement);
    if (!statement.isEmpty()) {
      mergeStatement(statement);
    }
    for (String name : names) {
      mergeField(name);
    }
    return new Outcome(new Json.Obj(result), differing);
  }

  /** Where, and who says so: who stood for the one place doesn't stand for the other. */
  private void mergeStatement(Set<String> fields) {
    if (same(mine, theirs, claim)) {
      if (fields.contains(EVIDENCE)) {
        List<Json> union =
            union(
                entries(base.get(EVIDENCE)),
                entries(mine.get(EVIDENCE)),
                entries(theirs.get(EVIDENCE)));
        result.put(EVIDENCE, Json.array(union));
      }
    } else if (!asks && same(mine, base, fields)) {
      fields.forEach(field -> put(field, theirs.get(field)));
    } else if (asks || !same(theirs, base, fields)) {
      List<Conflict> statement = new ArrayList<>();
      for (String field : fields) {
        if (!same(mine, theirs, Set.of(field))) {
          statement.add(new Conflict(field, mine.get(field), theirs.get(field)));
        }
      }
      differing.add(statement);
      if (asks && same(theirs, base, fields)) {
        fields.forEach(field -> put(field, base.get(field)));
      }
    }
  }

  private static boolean same(Map<String, Json> a, Map<String, Json> b, Set<String> fields) {
    return fields.stream().allMatch(field -> equal(a.get(field), b.get(field)));
  }

  private static boolean equal(@Nullable Json a, @Nullable Json b) {
    return a == null ? b == null : a.equals(b);
  }

  private void put(String field, @Nullable Json value) {
    if (value == null) {
      result.remove(field);
    } else {
      result.put(field, value);
    }
  }

  private void mergeField(String name) {
    Json m = mine.get(name);
    Json t = theirs.get(name);
    Json b = base.get(name);
    if (equal(m, t)) {
      return;
    }
    if (name.equals(ISSUE) && m != null && t != null) {
      differing.add(
          List.of(new Conflict(name, m, t))); // two revisions: what is true of one may not be
    } else if (equal(m, b)) {
      put(name, t);
    } else if (!equal(t, b)) {
      String apart = lists.get(name);
      List<Json> list = apart == null ? null : list(apart, entries(b), entries(m), entries(t));
      if (list == null) {
        differing.add(List.of(new Conflict(name, m, t)));
      } else {
        put(name, list.isEmpty() ? null : Json.array(list));
      }
    }
  }

  static List<Json> entries(@Nullable Json list) {
    return ((Json.Arr) (list == null ? NOTHING : list)).values();
  }

  /** The list merged entry by entry; null where both sides changed one entry differently. */
  private static @Nullable List<Json> list(
      String apart, List<Json> base, List<Json> mine, List<Json> theirs) {
    Map<Json, Json> b = byName(apart, base);
    Map<Json, Json> m = byName(apart, mine);
    Map<Json, Json> t = byName(apart, theirs);
    Set<Json> order = new LinkedHashSet<>(order(b, m, t));
    List<Json> merged = new ArrayList<>();
    for (Json name : order) {
      Json now;
      if (equal(m.get(name), t.get(name)) || equal(t.get(name), b.get(name))) {
        now = m.get(name);
      } else if (equal(m.get(name), b.get(name))) {
        now = t.get(name);
      } else {
        return null;
      }
      if (now != null) {
        merged.add(now);
      }
    }
    return merged;
  }

  private static Map<Json, Json> byName(String apart, List<Json> list) {
    Map<Json, Json> named = new LinkedHashMap<>();
    for (Json entry : list) {
      named.put(((Json.Obj) entry).fields().getOrDefault(apart, Json.none()), entry);
    }
    return named;
  }

  /** The names of all entries: as the side has them that changed the order, new ones behind. */
  private static List<Json> order(Map<Json, Json> b, Map<Json, Json> m, Map<Json, Json> t) {
    List<Json> first = new ArrayList<>(b.keySet());
    List<Json> left = new ArrayList<>(m.keySet());
    List<Json> right = new ArrayList<>(t.keySet());
    if (left.equals(right) || right.equals(first)) {
      first = left;
    } else if (left.equals(first)) {
      first = right;
    }
    TreeSet<Json> more = new TreeSet<>(Comparator.comparing(Json::compact, NameRules.NATURAL));
    more.addAll(left);
    more.addAll(right);
    first.forEach(more::remove);
    List<Json> order = new ArrayList<>(first);
    order.addAll(more);
    return order;
  }

  /** What any side says and none took back, in order of time; as it is where one is the base. */
  static List<Json> union(List<Json> base, List<Json> mine, List<Json> theirs) {
    if (mine.equals(theirs) || theirs.equals(base)) {
      return mine;
    }
    if (mine.equals(base)) {
      return theirs;
    }
    Map<Json, Integer> stated = new HashMap<>();
    mine.forEach(one -> stated.merge(one, 1, Integer::sum));
    theirs.forEach(one -> stated.merge(one, 1, Integer::sum));
    List<Json> union = new ArrayList<>();
    stated.forEach(
        (one, times) -> {
          if (times > 1 || !base.contains(one)) {
            union.add(one);
          }
        });
    if (union.isEmpty()) {
      union.addAll(
          stated.keySet()); // each took back what the other kept: somebody must stand for it
    }
    union.sort(BY_TIME);
    return union;
  }

  private static final Comparator<Json> BY_TIME =
      Comparator.<Json, String>comparing(one -> text(one, "at"))
          .thenComparing(one -> text(one, "author"))
          .thenComparing(one -> Evidence.of(text(one, EVIDENCE)))
          .thenComparing(one -> text(one, "note"));

  private static String text(Json attestation, String field) {
    Json value = ((Json.Obj) attestation).fields().get(field);
    return value instanceof Json.Text text ? text.value() : "";
  }
}
