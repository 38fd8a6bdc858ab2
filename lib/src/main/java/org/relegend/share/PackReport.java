package org.relegend.share;

import java.util.List;

/**
 * What of a map went into a pack, and what stayed out; a line each.
 *
 * @param bytes of the pack
 * @param digest of the map in the pack, by which it can be told as the base of a later merge
 */
public record PackReport(long bytes, String digest, List<String> wentIn, List<String> stayedOut) {
  public PackReport {
    wentIn = List.copyOf(wentIn);
    stayedOut = List.copyOf(stayedOut);
  }
}
