package org.relegend.demo.design;

/** A straight wire on the component side that joins two pieces of one net's copper. */
public record Link(String net, Spot from, Spot to) {}
