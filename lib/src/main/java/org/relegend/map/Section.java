package org.relegend.map;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One repeated element of a part: half of a dual op-amp, one transistor of an array, one gang of a
 * pot, one contact of a switch. A pin may belong to several (emitters tied inside) or to none
 * (supply pins).
 *
 * @param name "X", "Ta", "gang 2"; unique in its part
 * @param roles pin number to what that pin is in this section, in pin order
 */
public record Section(String name, Map<String, String> roles) {
  public Section {
    NameRules.checked("section name", name);
    roles = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(roles));
    roles.forEach(
        (number, role) -> {
          Pin.checkedNumber(number);
          TextRules.line("pin role", role);
        });
  }

  public boolean has(String pin) {
    return roles.containsKey(pin);
  }
}
