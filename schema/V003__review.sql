-- What the review keeps: verdicts by job with the moment at which the clock alone changes them, and findings.
-- All of it can be computed again from the facts.

create table review_head (
    site_no    smallint    not null,
    number     bigint      not null,
    terms_hash varchar(64) not null,
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

-- The jobs (k is a key with line 0) whose outcome the clock alone will change.
create table verdict (
    k          bigint                      not null,
    changes_at timestamp(6) with time zone not null,
    constraint verdict_pk primary key (k)
);
create index verdict_changes on verdict (changes_at);

-- Findings in the order of the job that they belong to; those of no job stand under job_no 0.
create table kept_finding (
    k             bigint        not null,
    rule          varchar(40)   not null,
    campaign      varchar(200),
    subject_kind  varchar(20)   not null,
    subject       varchar(200)  not null,
    part          varchar(200),
    step          varchar(200),
    found_month   integer,
    message       varchar(2000) not null,
    evidence      varchar(2000) not null,
    constraint kept_finding_pk primary key (k)
);
