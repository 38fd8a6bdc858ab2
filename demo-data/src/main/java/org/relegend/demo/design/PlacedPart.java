package org.relegend.demo.design;

/** One part of the instrument: the middle of its pins lies at ({@code at}). */
public record PlacedPart(String designator, String kind, String value, String channel, Spot at) {}
