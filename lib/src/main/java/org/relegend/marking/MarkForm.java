package org.relegend.marking;

import java.util.Optional;

/** One way in which markings are written, beyond a value with its ratings. */
@FunctionalInterface
interface MarkForm {
  /**
   * What the text says in this form; empty where it isn't written so. A text that sets out in this
   * form and fails is answered, as malformed.
   *
   * @param text that has been through {@link MarkingText#plain}, not empty
   */
  Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context);
}
