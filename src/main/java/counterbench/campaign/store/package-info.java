/** Campaign packs and vehicle lists in SQL. */
@NullMarked
package counterbench.campaign.store;

import org.jspecify.annotations.NullMarked;
