/**
 * A second, independent reading of the written contract, in plain Java, to check the tool against:
 * {@link counterbench.oracle.Oracle} judges a folder of sheets, {@link
 * counterbench.oracle.GarageWriter} writes such folders with every rule broken now and then. It
 * uses no other class of the project.
 *
 * <p>Where a sentence of the contract can be read in two ways, this is the reading taken here:
 *
 * <ul>
 *   <li>"longer than the site's patience", "days end at midnight of the site": patience of n days
 *       that starts on day d ends at the midnight that ends day d + n, for open jobs, shipped cores
 *       and claims alike.
 *   <li>"judged by the revision in force on the day of its completion": a job that ended otherwise
 *       by the day it ended, an open job (for its cores) by today's; a day before all revisions by
 *       the first.
 *   <li>"a job is open": until its completed_at, whatever its outcome; an outcome without that time
 *       ends nothing.
 *   <li>"not shipped by the end of the day": shipped at midnight exactly is the next day; at the
 *       as-of instant of that midnight the day has ended.
 *   <li>"no rule judges that line, whatever was done under it": short and over are not judged for a
 *       part of which any line is unclear; left-on-bench judges the account and knows no lines.
 *   <li>"required is the pack's quantity of a part whose when holds": for a part that the vehicle
 *       does not need, or that the pack does not name, it is zero, so that fitting it is
 *       hardware-over.
 *   <li>"a when asks for an attribute that the vehicle does not have": a condition of two
 *       attributes is unclear if either is missing, even if the other does not match; inside a kit
 *       that surely does not apply nothing is unclear, yet condition-unknown still holds.
 *   <li>"an at-least": where none is said, the quantity.
 *   <li>"matched-set-split ... one matched part new": parts are compared within one kit item of the
 *       pack; a part of which nothing new is on the vehicle is not compared; a taking-off undoes
 *       the latest fitting from its kit.
 *   <li>"a uses row without a kit, where the job has exactly one kit that holds the part, is taken
 *       from that kit": also where the row names a lot; a kit that never came holds nothing; a kit
 *       that arrived from another site holds the parts that its rows name.
 *   <li>"put back ... to KIT if the kit is named": named in the row; a kit only concluded does not
 *       count.
 *   <li>"expired-when-used": a row with a kit is judged by the kit; else by its lot, else by the
 *       only lot of that part issued to the job.
 *   <li>"a use that names a kit not issued to its job first moves that quantity": what its KIT
 *       holds, then what lies on benches that had it, earliest first; the rest makes this bench
 *       negative; refitting and taking off move nothing first.
 *   <li>"found missing later: KIT, BENCH to SUPPLIER": from the KIT while it holds the part, else
 *       from the bench to which it was last issued. It makes no kit-incomplete, which looks at the
 *       receipt.
 *   <li>"facts at one instant stand in this order": moves out of the store come after uses and
 *       before counts; the rest of a measured part goes to scrap after all.
 *   <li>"the rest of a measured part is scrapped": what is above zero of the part in sum on the
 *       bench; left-on-bench looks at the sum of a part, too.
 *   <li>"a kit is counted 1 or 0": the book says 1 while the kit holds anything; counted 0, all of
 *       it goes to COUNT; counted 1 against an empty kit, what it came with comes back. One finding
 *       per account and part, of the month of the latest count that differed.
 *   <li>"a core is packed and has no ended drain period": periods that do not count are none, so a
 *       core drained only after its plug is drain-not-logged.
 *   <li>"core-missing": all cores removed for the job against all that the terms surely want, cores
 *       of unclear terms apart. A core with no term that surely applies is judged by no rule that
 *       needs terms.
 *   <li>"packed otherwise": a core without a packed row has no core-packaging.
 *   <li>"not on the shipment": on which shipment a core is, is told with all facts up to the as-of
 *       instant. A stray row acknowledges nothing; a row with neither core nor serial acknowledges
 *       all on it.
 *   <li>"an earlier completed job ... does not name it": every earlier one must be named.
 *   <li>"claim-ungrounded ... its core did not meet needs": every core removed and as many as
 *       wanted.
 *   <li>"no credit" is no credit of any kind; paid-differently needs a credit other than a core
 *       credit, and compares with labour, parts and core charge. Withdrawn and denied claims are
 *       judged as others.
 *   <li>A claim or credit is known from its day on. A credit without a claim belongs to the only
 *       standing claim of its vehicle or of its core's job.
 *   <li>Findings on kits, accounts, shipments and credits bear no campaign; acknowledgement-stray
 *       and kit-unknown of a kit bear no month.
 *   <li>Consumption is by counted part: numbers replaced by another are summed under it. Scrapped
 *       is what went from the jobs' benches and vehicles to SCRAP, left is what lies there as of
 *       now. Behind a cell stand the jobs with reused-hardware, hardware-short, hardware-over or
 *       left-on-bench for the part.
 *   <li>Goods are those of the whole site, for the parts of the campaign's packs. Closing by count
 *       is the last count of the store in the month; unexplained is closing less opening and
 *       movements.
 * </ul>
 */
package counterbench.oracle;
