/**
 * What GS1 labels say: element strings read and written by the GS1 General Specifications (Release
 * 18), check digits, dates and the number of a shipped unit. The tables and their sources are in
 * {@code shared/gs1-ai.csv} and {@code shared/gs1-prefix.csv}.
 */
@NullMarked
package counterbench.labels.gs1;

import org.jspecify.annotations.NullMarked;
