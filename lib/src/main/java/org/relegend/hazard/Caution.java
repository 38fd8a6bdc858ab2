package org.relegend.hazard;

/**
 * One thing to mind, in plain words.
 *
 * @param key what it is known by
 * @param title a few words
 * @param text some sentences
 */
public record Caution(String key, String title, String text) {}
