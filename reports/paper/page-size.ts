/** A4, and where things stand on it; points (1/72 in) from the upper left corner. */
export const pageSize = {
  widthPt: 595.28,
  heightPt: 841.89,
  leftPt: 50,
  rightPt: 545.28,
  bodyWidthPt: 495.28,
  /** First line of the letterhead, of the running head and of the text on later pages. */
  letterheadTopPt: 46,
  runningHeadTopPt: 44,
  laterTopPt: 74,
  bottomPt: 778,
  footerRulePt: 786,
  footerTopPt: 792,
  /** Printers leave a rim of about 4 mm white: the marking stays clear of it. */
  marking: { leftPt: 24, widthPt: 547.28, heightPt: 18, topPt: 16, bottomTopPt: 808 },
} as const
