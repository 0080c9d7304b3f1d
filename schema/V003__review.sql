-- What the review keeps, so that only what was touched is judged again. All of it follows from the facts.

-- Up to where a site is judged. Each refresh adds one to its stamp, so that of two at once one starts again.
create table review_head (
    site_no  smallint    not null,
    stamp    bigint      not null,
    version  varchar(64) not null,
    constraint review_head_pk primary key (site_no)
);

-- What entries touched since it was last judged; an entry that touches very much touches all.
create table touched (
    site_no smallint     not null,
    number  bigint       not null,
    what    varchar(20)  not null,
    name    varchar(200) not null,
    constraint touched_pk primary key (site_no, number, what, name)
);

-- Jobs whose outcome changes at a moment though nothing is recorded; k is a key with line 0, and job 0 is what
-- belongs to no job.
create table verdict (
    k          bigint                      not null,
    changes_at timestamp(6) with time zone not null,
    constraint verdict_pk primary key (k)
);
create index verdict_changes on verdict (changes_at);

-- Findings in the order of the job that they belong to. Those of no job stand under job 0 and bear the section
-- that they are judged in, such as part:P or shipment:S.
create table kept_finding (
    k            bigint         not null,
    section      varchar(210)   not null,
    rule         varchar(40)    not null,
    campaign     varchar(200),
    subject_kind varchar(20)    not null,
    subject      varchar(500)   not null,
    part         varchar(200),
    step         varchar(200),
    found_month  integer,
    message      varchar(20000) not null,
    evidence     varchar(20000) not null,
    constraint kept_finding_pk primary key (k)
);
