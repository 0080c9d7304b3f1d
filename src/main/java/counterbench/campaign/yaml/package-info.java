/**
 * Reads campaign packs from YAML. Every problem is found in one pass and told with line and column;
 * the pack is handed out only where there is none.
 */
@NullMarked
package counterbench.campaign.yaml;

import org.jspecify.annotations.NullMarked;
