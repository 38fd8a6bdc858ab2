package org.relegend.circuit;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One usual way in which the pins of a kind are numbered.
 *
 * @param casing the package it holds for, as "DIP-8"; empty where that doesn't matter
 * @param terminals in pin order; a pin that works in two sections stands twice
 * @param source where it is from; empty where the numbers are the roles' own letters
 */
public record Pinout(String casing, List<Terminal> terminals, String source) {
  public Pinout {
    terminals = List.copyOf(terminals);
  }

  /** What this pin is, each section it works in once; nothing where the pinout hasn't got it. */
  public List<Terminal> at(String number) {
    List<Terminal> named =
        terminals.stream().filter(terminal -> terminal.number().equals(number)).toList();
    return named.isEmpty() ? open(number) : named;
  }

  private List<Terminal> open(String number) {
    return terminals.stream()
        .filter(terminal -> terminal.number().equals(Terminal.ANY))
        .map(terminal -> new Terminal(number, terminal.section(), terminal.role()))
        .toList();
  }

  /** Whether all these pin numbers occur in it. */
  public boolean covers(Collection<String> numbers) {
    return numbers.stream().noneMatch(number -> at(number).isEmpty());
  }

  /** Whether it gives roles by number, so that it holds for some types and packages only. */
  public boolean isNumbered() {
    return terminals.stream().anyMatch(t -> t.number().chars().allMatch(Character::isDigit));
  }

  /** The numbers it has, those left open not counted. */
  public Set<String> numbers() {
    return terminals.stream()
        .map(Terminal::number)
        .filter(number -> !number.equals(Terminal.ANY))
        .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
  }
}
