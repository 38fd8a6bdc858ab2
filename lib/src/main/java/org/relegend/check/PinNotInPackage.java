package org.relegend.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Pinout;
import org.relegend.finding.Finding;
import org.relegend.finding.Severity;
import org.relegend.lineup.PackageShape;
import org.relegend.lineup.Packages;
import org.relegend.map.NameRules;
import org.relegend.map.Part;
import org.relegend.map.Pin;
import org.relegend.map.Subject;

/** Pin numbers that neither the package nor any pinout of the kind has. */
final class PinNotInPackage implements Check {
  @Override
  public String code() {
    return "pin-not-in-package";
  }

  @Override
  public List<Finding> inspect(CheckContext context) {
    List<Finding> findings = new ArrayList<>();
    for (Part part : context.map().parts()) {
      beyondPackage(part).or(() -> outsideKind(context, part)).ifPresent(findings::add);
    }
    return findings;
  }

  private Optional<Finding> beyondPackage(Part part) {
    Optional<PackageShape> shape =
        part.casing().isEmpty() ? Optional.empty() : Packages.known().named(part.casing());
    return shape.flatMap(
        found -> {
          List<Pin> beyond =
              part.pins().stream()
                  .filter(pin -> isNumberAbove(pin.number(), found.pins().size()))
                  .toList();
          return finding(
              part, beyond, "a %s has pins 1 to %d".formatted(part.casing(), found.pins().size()));
        });
  }

  private static boolean isNumberAbove(String number, int last) {
    return number.matches("\\d{1,6}")
        && (Integer.parseInt(number) > last || Integer.parseInt(number) == 0);
  }

  /** Only where no pinout has all the pins: then those are named that the best one lacks. */
  private Optional<Finding> outsideKind(CheckContext context, Part part) {
    Optional<Kind> known =
        context.kind(part).filter(kind -> !kind.has(Kind.Trait.OPEN) && !kind.pinouts().isEmpty());
    if (known.isEmpty() || known.get().pinoutFor(part.pins(), part.casing()).isPresent()) {
      return Optional.empty();
    }
    List<Pin> fewest = part.pins();
    for (Pinout pinout : known.get().pinouts()) {
      List<Pin> lacking =
          part.pins().stream().filter(pin -> pinout.at(pin.number()).isEmpty()).toList();
      fewest = lacking.size() < fewest.size() ? lacking : fewest;
    }
    return finding(
        part, fewest, "%s has pins %s".formatted(withArticle(part.kind()), numbers(known.get())));
  }

  private static String withArticle(String word) {
    return (word.matches("(?i)[aeio].*") ? "an " : "a ") + word;
  }

  private static String numbers(Kind kind) {
    return kind.pinouts().stream()
        .map(pinout -> String.join(" ", natural(pinout.numbers())))
        .distinct()
        .collect(Collectors.joining(", or "));
  }

  private static Set<String> natural(Set<String> numbers) {
    Set<String> sorted = new TreeSet<>(NameRules.NATURAL);
    sorted.addAll(numbers);
    return sorted;
  }

  private Optional<Finding> finding(Part part, List<Pin> pins, String has) {
    if (pins.isEmpty()) {
      return Optional.empty();
    }
    String numbers = pins.stream().map(Pin::number).collect(Collectors.joining(", "));
    return Optional.of(
        new Finding(
            code(),
            Severity.WARNING,
            pins.stream().map(pin -> Subject.of(part.ref(pin))).toList(),
            "%s can have no pin %s: %s".formatted(part.designator(), numbers, has),
            "Correct the pin number, or the part's kind or package."));
  }
}
