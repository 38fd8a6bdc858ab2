package org.relegend.bench.suspect;

import org.relegend.map.Subject;

/**
 * What to do next.
 *
 * @param at the net to read, or the part to test
 * @param where the pin or part to touch, for people
 * @param why in a sentence
 */
public record NextReading(Subject at, String where, String why) {}
