package org.relegend.share;

import org.relegend.map.BoardMap;

/** What two people made of one map. */
record MapVersions(BoardMap base, BoardMap mine, BoardMap theirs) {}
