-- The site that a core was sent to, or where it arrived.

alter table cores_fact add column other_site varchar(200);
create index cores_fact_by_other_site on cores_fact (other_site);
