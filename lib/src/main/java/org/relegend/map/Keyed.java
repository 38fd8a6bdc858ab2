package org.relegend.map;

/** A value of the map that knows the key it is found by. */
public interface Keyed<K extends Comparable<? super K>> {
  K key();
}
