package org.relegend.table;

import java.util.List;
import java.util.stream.Stream;

/**
 * The columns a sort of table knows. They may stand in any order.
 *
 * @param required without which the table says nothing
 * @param optional which are unknown where absent
 */
public record TableColumns(List<String> required, List<String> optional) {
  public TableColumns {
    required = List.copyOf(required);
    optional = List.copyOf(optional);
  }

  /** All of them, as a header row would have them. */
  public List<String> all() {
    return Stream.concat(required.stream(), optional.stream()).toList();
  }

  @Override
  public String toString() {
    return String.join(", ", all());
  }
}
