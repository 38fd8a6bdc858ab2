package org.relegend.share;

import org.relegend.map.BoardMap;

/** What two people made of one map. */
record Versions(BoardMap base, BoardMap mine, BoardMap theirs) {}
