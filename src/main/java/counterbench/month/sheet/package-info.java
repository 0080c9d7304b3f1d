/**
 * The rows of the monthly workbooks, by the fields that their layouts name. They are gathered on
 * one way through a site's components; memory holds a component and what belongs to no job.
 */
@NullMarked
package counterbench.month.sheet;

import org.jspecify.annotations.NullMarked;
