package org.relegend.circuit;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.Designator;
import org.relegend.map.NameRules;
import org.relegend.map.Part;

/**
 * The kinds of part that are known. The usual ones come with the program (kinds.csv, where each
 * column is explained); a file of the same columns adds more or replaces some.
 */
public final class Kinds {
  private static final Kinds STANDARD = readStandard();

  private final Map<String, Kind> byName;
  private final Set<String> own;
  private final Map<String, Kind> byWord = new HashMap<>();

  private Kinds(Map<String, Kind> byName, Set<String> own) throws KindsException {
    this.byName = byName;
    this.own = Set.copyOf(own);
    for (Kind kind : byName.values()) {
      enter(kind, kind.name());
      for (String alias : kind.aliases()) {
        enter(kind, alias);
      }
    }
  }

  private void enter(Kind kind, String word) throws KindsException {
    Kind other = byWord.put(key(word), kind);
    if (other != null && !other.equals(kind)) {
      throw new KindsException(
          "\"%s\" is a word both for the kind %s and for the kind %s: it may be one's only"
              .formatted(NameRules.printable(word), other.name(), kind.name()));
    }
  }

  /** The kinds that come with the program. */
  public static Kinds standard() {
    return STANDARD;
  }

  private static Kinds readStandard() {
    try {
      Map<String, Kind> named =
          named(KindReader.kinds(KindTable.resource("kinds.csv", KindReader.COLUMNS)));
      named.replaceAll((name, kind) -> kind.with(usualNumbering(kind)));
      return new Kinds(named, Set.of());
    } catch (KindsException e) {
      throw new IllegalStateException("the program's own table of kinds is damaged", e);
    }
  }

  /**
   * Numbers never tell pins that differ from type to type; for the rest the package must be the
   * pinout's.
   */
  private static Kind.Numbering usualNumbering(Kind kind) {
    boolean differs = kind.has(Kind.Trait.VARIED) || kind.has(Kind.Trait.OPEN);
    return differs ? Kind.Numbering.NONE : Kind.Numbering.BY_PACKAGE;
  }

  /**
   * These kinds and those of a file, which go before where both have one of the same name.
   *
   * @throws KindsException naming file, line, column and what was expected; the kinds stay as they
   *     were
   */
  public Kinds with(Path file) throws KindsException {
    try {
      return with(new StringReader(Files.readString(file)), file.toString());
    } catch (NoSuchFileException missing) {
      throw new KindsException(file + " is not there: give a table of kinds of part", missing);
    } catch (CharacterCodingException coded) {
      throw new KindsException(file + " is not in UTF-8: save the table of kinds as that", coded);
    } catch (IOException e) {
      throw new KindsException(
          "%s can't be read (%s): give a table of kinds".formatted(file, e.getMessage()), e);
    }
  }

  Kinds with(Reader reader, String file) throws KindsException {
    Map<String, Kind> more =
        named(KindReader.kinds(KindTable.rows(reader, file, KindReader.COLUMNS)));
    Map<String, Kind> all = new LinkedHashMap<>(byName);
    all.putAll(more);
    Set<String> names = new HashSet<>(own);
    names.addAll(more.keySet());
    return new Kinds(all, names);
  }

  private static Map<String, Kind> named(List<Kind> kinds) {
    Map<String, Kind> named = new LinkedHashMap<>();
    kinds.forEach(kind -> named.put(kind.name(), kind));
    return named;
  }

  /** The kind of this name or alias; case, spaces and underscores don't matter. */
  public Optional<Kind> find(String word) {
    return Optional.ofNullable(byWord.get(key(word)));
  }

  /**
   * The part's kind, where it is known: of a known type with the pinouts of that type that its
   * package leaves.
   */
  public Optional<Kind> of(Part part) {
    return match(part).kind();
  }

  /** What the part's kind, type and package come to together. */
  public TypeMatch match(Part part) {
    return TypeMatch.of(part, this);
  }

  /** Whether the kind is one of a file, whose pinouts go before those of types. */
  boolean isOwn(Kind kind) {
    return own.contains(kind.name());
  }

  /** All of them, in the order of the table. */
  public Collection<Kind> all() {
    return List.copyOf(byName.values());
  }

  /** The kinds that a part of this designator can be: all that share its class letters. */
  public List<Kind> possible(Designator designator) {
    List<Kind> possible = new ArrayList<>();
    ClassLetters.of(designator)
        .ifPresent(
            letters ->
                byName.values().stream()
                    .filter(kind -> kind.letters().contains(letters))
                    .forEach(possible::add));
    return possible;
  }

  private static String key(String word) {
    return word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
  }
}
