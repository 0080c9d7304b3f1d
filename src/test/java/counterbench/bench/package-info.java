/**
 * Measures how the main job grows: writes paper for many jobs, takes it in, reviews, reconciles,
 * exports.
 */
@NullMarked
package counterbench.bench;

import org.jspecify.annotations.NullMarked;
