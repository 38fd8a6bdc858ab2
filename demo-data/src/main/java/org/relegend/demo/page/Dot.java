package org.relegend.demo.page;

/** A point of a page in points (1/72 inch), x to the right, y down from the upper left corner. */
public record Dot(double x, double y) {}
