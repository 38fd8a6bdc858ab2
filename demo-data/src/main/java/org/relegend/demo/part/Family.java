package org.relegend.demo.part;

/** Builds the solids of one kind of body. */
interface Family {
  void build(Kit kit);
}
