-- Every act asks when a site's newest entry was recorded, whatever its number.
create index entry_by_time on entry (site_no, recorded_at);
