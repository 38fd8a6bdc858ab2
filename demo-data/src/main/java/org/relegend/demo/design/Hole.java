package org.relegend.demo.design;

/** A mounting hole, with its diameter in millimetres. */
public record Hole(Spot at, double diameter) {}
