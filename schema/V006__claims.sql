-- What the warranty desk says of credits, and the months that are closed.

-- So much of a line of a remittance belongs to a claim, whatever the line itself names.
create table matches_fact (
    site_no         smallint not null,
    batch           bigint not null,
    line            integer not null,
    ref             varchar(200),
    booked          integer,
    remittance      varchar(200) not null,
    remittance_line varchar(200) not null,
    claim           varchar(200) not null,
    amount          decimal(18,3) not null,
    at              timestamp(6) with time zone not null,
    reason          varchar(1000) not null,
    constraint matches_fact_pk primary key (batch, line)
);
create index matches_fact_by_claim on matches_fact (site_no, claim);
create index matches_fact_by_remittance on matches_fact (site_no, remittance);

-- A month of a site that nothing is booked in any more.
create table seals_fact (
    site_no      smallint not null,
    batch        bigint not null,
    line         integer not null,
    ref          varchar(200),
    booked       integer,
    sealed_month varchar(7) not null,
    at           timestamp(6) with time zone not null,
    constraint seals_fact_pk primary key (batch, line)
);
create index seals_fact_by_site on seals_fact (site_no);
