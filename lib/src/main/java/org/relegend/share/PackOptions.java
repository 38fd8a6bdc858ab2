package org.relegend.share;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.relegend.map.PictureId;

/**
 * What the sender wants to give away.
 *
 * @param photos those that go along; all where empty
 * @param pages whether the files of schematic pages go along: only where the sender may copy them
 * @param notes whether free text goes along
 * @param names whether authors go by the names they have in the map; else they are numbered
 * @param aliases what authors are called instead, by their names in the map
 * @param never texts that must not be in the pack: it isn't written if one of them turns up
 */
public record PackOptions(
    Optional<Set<PictureId>> photos,
    boolean pages,
    boolean notes,
    boolean names,
    Map<String, String> aliases,
    List<String> never) {
  /** All photos, no pages, no free text, nobody's name. */
  public static final PackOptions DEFAULT =
      new PackOptions(Optional.empty(), false, false, false, Map.of(), List.of());

  public PackOptions {
    photos = photos.map(Set::copyOf);
    aliases = Map.copyOf(aliases);
    never = List.copyOf(never);
  }
}
