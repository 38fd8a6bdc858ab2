package org.relegend.viewer.app;

/** The one entry point of the runnable jar. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    System.exit(2);
  }
}
