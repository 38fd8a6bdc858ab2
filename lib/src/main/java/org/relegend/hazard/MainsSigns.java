package org.relegend.hazard;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.relegend.circuit.Kind;
import org.relegend.circuit.Node;
import org.relegend.circuit.Terminal;
import org.relegend.map.Net;
import org.relegend.map.Part;
import org.relegend.map.Pin;
import org.relegend.map.Potential;
import org.relegend.map.Subject;

/** Finds what looks like mains by its names, where the map says nothing else (common practice). */
final class MainsSigns {
  private static final Set<String> LIVE = Set.of("l", "live", "line", "phase", "ph", "l1");
  private static final Set<String> NEUTRAL = Set.of("n", "neutral");
  private static final Set<String> EARTH = Set.of("e", "pe", "earth", "protective earth", "ground");
  private static final Set<String> NAMES = Set.of("mains", "live", "neutral", "netz");

  /** With one of these a net is about the mains, not on it. */
  private static final Set<String> ABOUT =
      Set.of("e", "pe", "earth", "gnd", "ok", "sense", "detect", "fail", "sync", "led", "0v");

  private static final String USUAL = "(100|110|115|117|120|127|200|208|220|230|240)";

  /** Names that are the mains' own as a whole, and parts of other names. */
  private static final Pattern WHOLE =
      Pattern.compile("ac_?[ln]|[ln]_in|line|phase|" + USUAL + "_?v(_?ac)?(_?[ln])?");

  private static final Pattern ALTERNATING =
      Pattern.compile("ac" + USUAL + "v?|" + USUAL + "v?ac|" + USUAL + "v~");
  private static final Pattern PRIMARY = Pattern.compile("(?i).*\\b" + USUAL + "\\s*v.*");
  private static final Pattern INLET =
      Pattern.compile(
          "(?iu).*\\b(mains|iec|schuko\\p{L}*|netz\\p{L}*|kaltger\\p{L}*|c8|c14|c20|inlet|ac[ -]in"
              + "|(power|line)[ -]?(cord|plug|inlet)|"
              + USUAL
              + "\\s*v\\s*~)(?!\\p{L}).*");
  private static final Set<String> FAMILIES = Set.of("connector", "switch", "fuse", "filter");

  private final CautiousTraversal walk;
  private final Declared declared;
  private final MainsReach mains;

  MainsSigns(CautiousTraversal walk, Declared declared, MainsReach mains) {
    this.walk = walk;
    this.declared = declared;
    this.mains = mains;
  }

  List<MainsSign> find() {
    List<MainsSign> signs = new ArrayList<>();
    for (Net net : walk.circuit().map().nets()) {
      Node node = Node.of(net.id());
      boolean open = net.potential().nature() == Potential.Nature.UNKNOWN && !mains.has(node);
      if (open && isName(net.name())) {
        signs.add(
            new MainsSign(Subject.of(net.id()), "has the name of a mains net", List.of(node)));
      }
    }
    walk.circuit().map().parts().forEach(part -> sign(part).ifPresent(signs::add));
    return signs;
  }

  private static boolean isName(String name) {
    List<String> words = List.of(name.toLowerCase(Locale.ROOT).split("[^a-z0-9~]+"));
    boolean named =
        words.stream()
            .anyMatch(word -> NAMES.contains(word) || ALTERNATING.matcher(word).matches());
    boolean whole = WHOLE.matcher(String.join("_", words)).matches();
    return (named || whole) && words.stream().noneMatch(ABOUT::contains);
  }

  /** None where mains is known to reach any of its pins. */
  private Optional<MainsSign> sign(Part part) {
    if (nodes(part, pin -> true).stream().anyMatch(mains::has)) {
      return Optional.empty();
    }
    if (has(part, LIVE) && has(part, NEUTRAL)) {
      return sign(
          part,
          "has pins for live and neutral",
          nodes(part, pin -> isAny(pin, LIVE) || isAny(pin, NEUTRAL)));
    }
    if (isNamed(part)) {
      return sign(part, "is called a part of the mains", nodes(part, pin -> !isAny(pin, EARTH)));
    }
    return isTransformer(part) && PRIMARY.matcher(part.value()).matches()
        ? sign(part, "has a primary for the mains", nodes(part, pin -> mayBePrimary(part, pin)))
        : Optional.empty();
  }

  private boolean isTransformer(Part part) {
    return walk.circuit()
        .kindOf(part.id())
        .filter(kind -> kind.name().equals("transformer"))
        .isPresent();
  }

  private boolean isNamed(Part part) {
    Optional<Kind> kind = walk.circuit().kindOf(part.id());
    boolean fits = kind.isEmpty() || FAMILIES.contains(kind.get().family());
    return fits
        && Stream.of(part.value(), part.kind()).anyMatch(text -> INLET.matcher(text).matches());
  }

  private Optional<MainsSign> sign(Part part, String words, List<Node> nodes) {
    List<Node> open = nodes.stream().filter(node -> !declared.isTold(node)).toList();
    return open.isEmpty()
        ? Optional.empty()
        : Optional.of(new MainsSign(Subject.of(part.id()), words, open));
  }

  private List<Node> nodes(Part part, Predicate<Pin> wanted) {
    Set<Node> found = new LinkedHashSet<>();
    part.pins().stream()
        .filter(wanted)
        .forEach(pin -> found.addAll(walk.circuit().nodesOf(part.ref(pin))));
    return List.copyOf(found);
  }

  /** One that nobody told may be of any winding. */
  private boolean mayBePrimary(Part part, Pin pin) {
    return !walk.isTold(part, pin) || isPrimary(part, pin);
  }

  private boolean isPrimary(Part part, Pin pin) {
    return walk.isTold(part, pin)
        && walk.circuit().terminalsOf(part.id()).stream()
            .filter(terminal -> terminal.number().equals(pin.number()))
            .map(Terminal::section)
            .anyMatch(section -> section.toLowerCase(Locale.ROOT).startsWith("pri"));
  }

  private static boolean has(Part part, Set<String> words) {
    return part.pins().stream().anyMatch(pin -> isAny(pin, words));
  }

  private static boolean isAny(Pin pin, Set<String> words) {
    return words.contains(pin.number().toLowerCase(Locale.ROOT))
        || words.contains(pin.role().strip().toLowerCase(Locale.ROOT));
  }
}
