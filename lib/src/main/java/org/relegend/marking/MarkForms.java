package org.relegend.marking;

import java.util.List;
import java.util.Optional;

/** All forms of markings known here, each of which says by itself where it may stand. */
final class MarkForms {
  /** The first that answers counts, so what is more particular stands first. */
  private static final List<MarkForm> FORMS =
      List.of(
          new TypeNumberAlone(),
          (text, context) -> sections(text, context),
          new MilitaryStyle(),
          new ZenerType(),
          new RegulatorType(),
          new FuseMark(),
          new VaristorMark(),
          new ThermistorMark(),
          new CodeWithLetterM(),
          new VoltageCode(),
          new CodeWithVolts(),
          new CapacitorColours(),
          new PotentiometerLaw(),
          new OhmLetterE(),
          new RatedResistor(),
          new CrystalMark(),
          new RelayCoil(),
          new WorkingVolts());

  private MarkForms() {}

  /** What the first form that the text is written in says. */
  static Optional<MarkingReadings<ValueReading>> read(String text, MarkContext context) {
    for (MarkForm form : FORMS) {
      Optional<MarkingReadings<ValueReading>> answer = form.read(text, context);
      if (answer.isPresent()) {
        return answer;
      }
    }
    return Optional.empty();
  }

  /** Several sections in one can; a capacitor's alone, since "2x10k" is no can. */
  private static Optional<MarkingReadings<ValueReading>> sections(
      String text, MarkContext context) {
    return context.may(PartClass.CAPACITOR)
        ? CapacitorSections.reading(text).map(can -> MarkingReadings.read(List.of(can)))
        : Optional.empty();
  }
}
