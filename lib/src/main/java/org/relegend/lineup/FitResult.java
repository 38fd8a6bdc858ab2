package org.relegend.lineup;

/** What fitting point pairs comes to: a fit, or one clear reason why there is none. */
public sealed interface FitResult permits Fit, Refusal {}
