package org.relegend.viewer.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.prefs.Preferences;
import org.jspecify.annotations.Nullable;
import org.relegend.map.Evidence;
import org.relegend.sheet.PaperSize;

/** What the window remembers from one sitting to the next; nothing of it is in any map. */
public final class ViewerPreferences {
  private static final int RECENT = 8;

  private final Function<String, @Nullable String> get;
  private final BiConsumer<String, String> put;

  private ViewerPreferences(
      Function<String, @Nullable String> get, BiConsumer<String, String> put) {
    this.get = get;
    this.put = put;
  }

  /** Those of the person who is logged in. */
  public static ViewerPreferences ofUser() {
    Preferences node = Preferences.userRoot().node("org/relegend/viewer");
    return new ViewerPreferences(key -> node.get(key, null), node::put);
  }

  /** Forgotten with the program. */
  public static ViewerPreferences inMemory() {
    Map<String, String> all = new HashMap<>();
    return new ViewerPreferences(all::get, all::put);
  }

  private Optional<String> text(String key) {
    return Optional.ofNullable(get.apply(key)).filter(text -> !text.isEmpty());
  }

  /** Folders opened lately that are still there, the last one first. */
  List<Path> recent() {
    List<Path> folders = new ArrayList<>();
    for (int i = 0; i < RECENT; i++) {
      text("recent." + i).map(Path::of).filter(Files::isDirectory).ifPresent(folders::add);
    }
    return folders;
  }

  void opened(Path folder) {
    Path whole = folder.toAbsolutePath().normalize();
    List<Path> folders = recent();
    folders.remove(whole);
    folders.add(0, whole);
    for (int i = 0; i < RECENT; i++) {
      put.accept("recent." + i, i < folders.size() ? folders.get(i).toString() : "");
    }
  }

  Theme theme() {
    return text("theme").map(Theme::valueOf).orElse(Theme.SYSTEM);
  }

  void setTheme(Theme theme) {
    put.accept("theme", theme.name());
  }

  String author() {
    return text("author").orElse("");
  }

  void setAuthor(String author) {
    put.accept("author", author);
  }

  Evidence evidence() {
    return text("evidence").map(Evidence::of).orElse(Evidence.SEEN);
  }

  void setEvidence(Evidence evidence) {
    put.accept("evidence", evidence.word());
  }

  /** Whether the cautions were read here when this map was first opened. */
  boolean hasReadCautions(String map) {
    return text("cautions").filter(read -> List.of(read.split(" ", -1)).contains(map)).isPresent();
  }

  /** The maps of which they were, the last ones only: a preference holds some 8,000 characters. */
  void readCautions(String map) {
    List<String> maps = new ArrayList<>(List.of(text("cautions").orElse("").split(" ", -1)));
    maps.removeIf(known -> known.isEmpty() || known.equals(map));
    maps.add(map);
    put.accept(
        "cautions", String.join(" ", maps.subList(Math.max(0, maps.size() - 50), maps.size())));
  }

  PaperSize paper() {
    return text("paper").map(PaperSize::of).orElse(PaperSize.A4);
  }

  void setPaper(PaperSize paper) {
    put.accept("paper", paper.word());
  }

  /** Where file dialogs begin. */
  Path lastFolder() {
    return text("folder").map(Path::of).orElse(Path.of(System.getProperty("user.home")));
  }

  void setLastFolder(Path folder) {
    put.accept("folder", folder.toAbsolutePath().toString());
  }
}
