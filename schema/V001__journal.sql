-- Sites, their journal, and the names that keys are made from.
-- Times are instants in UTC cut to microseconds; quantities carry three decimal places.

create sequence batch_no start with 1 increment by 1;

create table site (
    site_no              smallint      not null,
    site                 varchar(40)   not null,
    name                 varchar(200)  not null,
    zone                 varchar(60)   not null,
    currency             varchar(3)    not null,
    job_days             integer       not null,
    acknowledgement_days integer       not null,
    credit_days          integer       not null,
    company_prefix       varchar(10),
    constraint site_pk primary key (site_no),
    constraint site_name_once unique (site),
    constraint site_no_fits_key check (site_no between 1 and 1023)
);

-- The end of each site's chain. An act locks its row first, so that numbers have no gaps.
create table journal_head (
    site_no     smallint    not null,
    last_number bigint      not null,
    last_hash   varchar(64) not null,
    next_job_no integer     not null,
    constraint journal_head_pk primary key (site_no),
    constraint journal_head_site foreign key (site_no) references site (site_no)
);

-- One act or one import batch. Facts bear the batch; only a batch that has an entry is posted.
create table entry (
    site_no      smallint                    not null,
    number       bigint                      not null,
    id           uuid                        not null,
    batch        bigint                      not null,
    recorded_at  timestamp(6) with time zone not null,
    person       varchar(200)                not null,
    kind         varchar(40)                 not null,
    source       varchar(1000)               not null,
    reverses     bigint,
    fact_count   integer                     not null,
    content_hash varchar(64)                 not null,
    hash         varchar(64)                 not null,
    constraint entry_pk primary key (site_no, number),
    constraint entry_id_once unique (id),
    constraint entry_batch_once unique (batch),
    constraint entry_site foreign key (site_no) references site (site_no)
);

-- An import that is being staged. Its shell renews the heartbeat; a dead one is cleared by the next import.
create table staging (
    site_no   smallint                    not null,
    batch     bigint                      not null,
    person    varchar(200)                not null,
    heartbeat timestamp(6) with time zone not null,
    constraint staging_pk primary key (site_no)
);

-- A job's number in keys, given when its name is first written.
create table job_name (
    site_no smallint     not null,
    job     varchar(200) not null,
    job_no  integer      not null,
    constraint job_name_pk primary key (site_no, job),
    constraint job_name_no_once unique (site_no, job_no),
    constraint job_no_fits_key check (job_no between 1 and 536870911)
);

-- The job that a core tag was removed on, and its serial.
create table core_tag (
    site_no smallint     not null,
    core    varchar(200) not null,
    job_no  integer      not null,
    serial  varchar(200) not null,
    constraint core_tag_pk primary key (site_no, core)
);
create index core_tag_serial on core_tag (site_no, serial);
create index core_tag_job on core_tag (site_no, job_no);

-- Which jobs name which kit.
create table kit_link (
    site_no smallint     not null,
    kit     varchar(200) not null,
    job_no  integer      not null,
    constraint kit_link_pk primary key (site_no, kit, job_no)
);
create index kit_link_job on kit_link (site_no, job_no);

-- The paper's own number of a row; k where the row's table is kept in job order.
create table fact_ref (
    site_no smallint     not null,
    kind    varchar(40)  not null,
    ref     varchar(200) not null,
    batch   bigint       not null,
    line    integer      not null,
    k       bigint
);
create index fact_ref_by_ref on fact_ref (site_no, kind, ref);

-- PINs are no facts: they change, and no journal bears them.
create table person_pin (
    name       varchar(200) not null,
    pin_hash   varchar(200) not null,
    failures   integer      not null,
    wait_until timestamp(6) with time zone,
    constraint person_pin_pk primary key (name)
);
