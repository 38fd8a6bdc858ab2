package org.relegend.map;

import java.util.function.Predicate;

/** Takes out of a map whatever speaks of something that is removed from it. */
final class References {
  private References() {}

  /** The map without placements, twins, discrepancies and deviations of subjects that are gone. */
  static BoardMap without(BoardMap map, Predicate<Subject> gone) {
    BoardMap result =
        map.withPlacements(keep(map.placements(), placement -> !gone.test(placement.subject())))
            .withTwins(keep(map.twins(), twin -> !gone.test(twin.a()) && !gone.test(twin.b())));
    return result
        .withDiscrepancies(
            keep(map.discrepancies(), discrepancy -> !gone.test(discrepancy.subject())))
        .withDeviations(
            keep(map.deviations(), deviation -> deviation.at().stream().noneMatch(gone)));
  }

  static <K extends Comparable<? super K>, V extends Keyed<K>> Table<K, V> keep(
      Table<K, V> table, Predicate<V> kept) {
    java.util.List<V> rest = table.stream().filter(kept).toList();
    return rest.size() == table.size() ? table : Table.of(rest);
  }
}
