-- Facts, one table a kind, append-only: a row for each row of a sheet or each act at the shell.
-- Columns bear the sheets' headings, but for words that SQL keeps for itself. batch and line say where in the
-- journal a fact stands; booked is the month (yyyymm) in which it counts for goods and workbooks.
-- The six tables in job order have one BIGINT key: site 10 bits, job 29, line 24.

create table people_fact (
    site_no smallint not null,
    batch   bigint not null,
    line    integer not null,
    ref     varchar(200),
    booked  integer,
    name    varchar(200) not null,
    roles   varchar(200) not null,
    constraint people_fact_pk primary key (batch, line)
);
create index people_fact_by_name on people_fact (name);

create table parts_fact (
    site_no smallint not null,
    batch   bigint not null,
    line    integer not null,
    ref     varchar(200),
    booked  integer,
    part    varchar(200) not null,
    name    varchar(200) not null,
    unit    varchar(200) not null,
    constraint parts_fact_pk primary key (batch, line)
);
create index parts_fact_by_part on parts_fact (part);

create table instruments_fact (
    site_no    smallint not null,
    batch      bigint not null,
    line       integer not null,
    ref        varchar(200),
    booked     integer,
    instrument varchar(200) not null,
    kind       varchar(200) not null,
    unit       varchar(200) not null,
    serial     varchar(200),
    constraint instruments_fact_pk primary key (batch, line)
);
create index instruments_fact_by_instrument on instruments_fact (instrument);

create table calibrations_fact (
    site_no             smallint not null,
    batch               bigint not null,
    line                integer not null,
    ref                 varchar(200),
    booked              integer,
    instrument          varchar(200) not null,
    calibrated_on       date not null,
    due_on              date not null,
    certificate         varchar(200),
    uncertainty_percent decimal(18,6),
    uncertainty         decimal(18,6),
    constraint calibrations_fact_pk primary key (batch, line)
);
create index calibrations_fact_by_instrument on calibrations_fact (instrument);

create table rates_fact (
    site_no    smallint not null,
    batch      bigint not null,
    line       integer not null,
    ref        varchar(200),
    booked     integer,
    rate       varchar(200) not null,
    amount     decimal(18,3) not null,
    currency   varchar(200) not null,
    valid_from date not null,
    constraint rates_fact_pk primary key (batch, line)
);

create table vehicles_fact (
    site_no    smallint not null,
    batch      bigint not null,
    line       integer not null,
    ref        varchar(200),
    booked     integer,
    campaign   varchar(200) not null,
    vin        varchar(200) not null,
    model      varchar(200),
    attributes varchar(1000),
    vin_key    varchar(200) not null,
    constraint vehicles_fact_pk primary key (batch, line)
);
create index vehicles_fact_by_vin_key on vehicles_fact (campaign, vin_key);

create table orders_fact (
    site_no      smallint not null,
    batch        bigint not null,
    line         integer not null,
    ref          varchar(200),
    booked       integer,
    order_name   varchar(200) not null,
    part         varchar(200) not null,
    quantity     decimal(18,3) not null,
    ordered_on   date not null,
    expected_on  date,
    cancelled_on date,
    done_by      varchar(200),
    constraint orders_fact_pk primary key (batch, line)
);
create index orders_fact_by_order_name on orders_fact (site_no, order_name);

create table kits_fact (
    site_no     smallint not null,
    batch       bigint not null,
    line        integer not null,
    ref         varchar(200),
    booked      integer,
    kit         varchar(200) not null,
    kit_part    varchar(200) not null,
    received_at timestamp(6) with time zone not null,
    revision    varchar(200),
    expires_on  date,
    lot         varchar(200),
    unit_cost   decimal(18,6),
    currency    varchar(200),
    missing     varchar(1000),
    document    varchar(200),
    done_by     varchar(200),
    constraint kits_fact_pk primary key (batch, line)
);
create index kits_fact_by_kit on kits_fact (site_no, kit);

create table shipments_fact (
    site_no     smallint not null,
    batch       bigint not null,
    line        integer not null,
    ref         varchar(200),
    booked      integer,
    shipment    varchar(200) not null,
    carrier     varchar(200) not null,
    tracking    varchar(200) not null,
    weight      decimal(18,6),
    weight_unit varchar(200),
    done_by     varchar(200),
    constraint shipments_fact_pk primary key (batch, line)
);
create index shipments_fact_by_shipment on shipments_fact (site_no, shipment);

create table jobs_fact (
    k            bigint not null,
    site_no      smallint not null,
    batch        bigint not null,
    line         integer not null,
    ref          varchar(200),
    booked       integer,
    job          varchar(200) not null,
    campaign     varchar(200) not null,
    vin          varchar(200) not null,
    opened_at    timestamp(6) with time zone not null,
    work_order   varchar(200),
    technician   varchar(200),
    completed_at timestamp(6) with time zone,
    outcome      varchar(200),
    redo_of      varchar(200),
    mileage      bigint,
    vin_key      varchar(200) not null,
    constraint jobs_fact_pk primary key (k)
);
create index jobs_fact_by_job on jobs_fact (site_no, job);
create index jobs_fact_by_vin_key on jobs_fact (vin_key);

create table contacts_fact (
    site_no  smallint not null,
    batch    bigint not null,
    line     integer not null,
    ref      varchar(200),
    booked   integer,
    campaign varchar(200) not null,
    vin      varchar(200) not null,
    at       timestamp(6) with time zone not null,
    outcome  varchar(200) not null,
    reason   varchar(1000),
    done_by  varchar(200),
    constraint contacts_fact_pk primary key (batch, line)
);

create table receipts_fact (
    site_no     smallint not null,
    batch       bigint not null,
    line        integer not null,
    ref         varchar(200),
    booked      integer,
    part        varchar(200) not null,
    quantity    decimal(18,3) not null,
    received_at timestamp(6) with time zone not null,
    lot         varchar(200),
    expires_on  date,
    unit_cost   decimal(18,6),
    currency    varchar(200),
    document    varchar(200),
    done_by     varchar(200),
    constraint receipts_fact_pk primary key (batch, line)
);

create table issues_fact (
    k        bigint not null,
    site_no  smallint not null,
    batch    bigint not null,
    line     integer not null,
    ref      varchar(200),
    booked   integer,
    job      varchar(200) not null,
    at       timestamp(6) with time zone not null,
    kit      varchar(200),
    part     varchar(200),
    quantity decimal(18,3),
    lot      varchar(200),
    done_by  varchar(200),
    constraint issues_fact_pk primary key (k)
);

create table uses_fact (
    k              bigint not null,
    site_no        smallint not null,
    batch          bigint not null,
    line           integer not null,
    ref            varchar(200),
    booked         integer,
    job            varchar(200) not null,
    part           varchar(200) not null,
    quantity       decimal(18,3) not null,
    condition_word varchar(200) not null,
    at             timestamp(6) with time zone not null,
    kit            varchar(200),
    lot            varchar(200),
    core           varchar(200),
    was            varchar(200),
    done_by        varchar(200),
    reason         varchar(1000),
    constraint uses_fact_pk primary key (k)
);

create table marks_fact (
    k          bigint not null,
    site_no    smallint not null,
    batch      bigint not null,
    line       integer not null,
    ref        varchar(200),
    booked     integer,
    job        varchar(200) not null,
    step       varchar(200) not null,
    at         timestamp(6) with time zone not null,
    mark_value decimal(18,6),
    unit       varchar(200),
    fastener   bigint,
    minutes    decimal(18,6),
    instrument varchar(200),
    done_by    varchar(200),
    constraint marks_fact_pk primary key (k)
);

create table cores_fact (
    k         bigint not null,
    site_no   smallint not null,
    batch     bigint not null,
    line      integer not null,
    ref       varchar(200),
    booked    integer,
    core      varchar(200) not null,
    event     varchar(200) not null,
    at        timestamp(6) with time zone not null,
    job       varchar(200),
    serial    varchar(200),
    part      varchar(200),
    quantity  decimal(18,3),
    packaging varchar(200),
    shipment  varchar(200),
    reason    varchar(1000),
    done_by   varchar(200),
    constraint cores_fact_pk primary key (k)
);

create index cores_fact_by_shipment on cores_fact (site_no, shipment);

create table moves_fact (
    site_no    smallint not null,
    batch      bigint not null,
    line       integer not null,
    ref        varchar(200),
    booked     integer,
    event      varchar(200) not null,
    at         timestamp(6) with time zone not null,
    kit        varchar(200),
    part       varchar(200),
    quantity   decimal(18,3),
    lot        varchar(200),
    other_site varchar(200),
    document   varchar(200),
    reason     varchar(1000),
    done_by    varchar(200),
    constraint moves_fact_pk primary key (batch, line)
);

create table acknowledgements_fact (
    site_no  smallint not null,
    batch    bigint not null,
    line     integer not null,
    ref      varchar(200),
    booked   integer,
    shipment varchar(200) not null,
    at       timestamp(6) with time zone not null,
    event    varchar(200) not null,
    core     varchar(200),
    serial   varchar(200),
    reason   varchar(1000),
    done_by  varchar(200),
    constraint acknowledgements_fact_pk primary key (batch, line)
);
create index acknowledgements_fact_by_core on acknowledgements_fact (site_no, core);
create index acknowledgements_fact_by_serial on acknowledgements_fact (site_no, serial);
create index acknowledgements_fact_by_shipment on acknowledgements_fact (site_no, shipment);

create table counts_fact (
    site_no    smallint not null,
    batch      bigint not null,
    line       integer not null,
    ref        varchar(200),
    booked     integer,
    counted_at timestamp(6) with time zone not null,
    quantity   decimal(18,3) not null,
    part       varchar(200),
    kit        varchar(200),
    done_by    varchar(200),
    constraint counts_fact_pk primary key (batch, line)
);

create table claims_fact (
    k             bigint not null,
    site_no       smallint not null,
    batch         bigint not null,
    line          integer not null,
    ref           varchar(200),
    booked        integer,
    claim         varchar(200) not null,
    job           varchar(200) not null,
    submitted_on  date not null,
    labour_hours  decimal(18,6),
    labour_amount decimal(18,3),
    parts_amount  decimal(18,3),
    core_charge   decimal(18,3),
    currency      varchar(200),
    withdrawn_on  date,
    denied_on     date,
    reason        varchar(1000),
    replaces      varchar(200),
    done_by       varchar(200),
    constraint claims_fact_pk primary key (k)
);
create index claims_fact_by_claim on claims_fact (site_no, claim);

create table credits_fact (
    site_no         smallint not null,
    batch           bigint not null,
    line            integer not null,
    ref             varchar(200),
    booked          integer,
    remittance      varchar(200) not null,
    remittance_line varchar(200) not null,
    amount          decimal(18,3) not null,
    paid_on         date not null,
    claim           varchar(200),
    vin             varchar(200),
    core            varchar(200),
    serial          varchar(200),
    currency        varchar(200),
    kind            varchar(200),
    vin_key         varchar(200),
    constraint credits_fact_pk primary key (batch, line)
);
create index credits_fact_by_claim on credits_fact (site_no, claim);
create index credits_fact_by_remittance on credits_fact (site_no, remittance);

create table sites_fact (
    site_no              smallint not null,
    batch                bigint not null,
    line                 integer not null,
    ref                  varchar(200),
    booked               integer,
    site                 varchar(200) not null,
    name                 varchar(200) not null,
    zone                 varchar(200) not null,
    currency             varchar(200) not null,
    job_days             bigint,
    acknowledgement_days bigint,
    credit_days          bigint,
    company_prefix       varchar(200),
    constraint sites_fact_pk primary key (batch, line)
);

create table packs_fact (
    site_no   smallint not null,
    batch     bigint not null,
    line      integer not null,
    ref       varchar(200),
    booked    integer,
    campaign  varchar(200) not null,
    revision  varchar(200) not null,
    file_name varchar(200) not null,
    text      varchar(1000000) not null,
    constraint packs_fact_pk primary key (batch, line)
);
create index packs_fact_by_campaign on packs_fact (campaign);

create table settlements_fact (
    site_no       smallint not null,
    batch         bigint not null,
    line          integer not null,
    ref           varchar(200),
    booked        integer,
    rule          varchar(200) not null,
    subject_kind  varchar(200) not null,
    subject       varchar(200) not null,
    at            timestamp(6) with time zone not null,
    reason        varchar(1000) not null,
    evidence_hash varchar(200) not null,
    evidence      varchar(1000) not null,
    part          varchar(200),
    step          varchar(200),
    constraint settlements_fact_pk primary key (batch, line)
);

create table overrides_fact (
    site_no  smallint not null,
    batch    bigint not null,
    line     integer not null,
    ref      varchar(200),
    booked   integer,
    gate     varchar(200) not null,
    subject  varchar(200) not null,
    at       timestamp(6) with time zone not null,
    reason   varchar(1000) not null,
    findings varchar(1000),
    constraint overrides_fact_pk primary key (batch, line)
);

create table reversals_fact (
    site_no    smallint not null,
    batch      bigint not null,
    line       integer not null,
    ref        varchar(200),
    booked     integer,
    entry      bigint not null,
    at         timestamp(6) with time zone not null,
    reason     varchar(1000) not null,
    entry_line bigint,
    constraint reversals_fact_pk primary key (batch, line)
);
create index reversals_fact_by_entry on reversals_fact (site_no, entry);

create table pins_fact (
    site_no smallint not null,
    batch   bigint not null,
    line    integer not null,
    ref     varchar(200),
    booked  integer,
    name    varchar(200) not null,
    at      timestamp(6) with time zone not null,
    constraint pins_fact_pk primary key (batch, line)
);

create table role_changes_fact (
    site_no smallint not null,
    batch   bigint not null,
    line    integer not null,
    ref     varchar(200),
    booked  integer,
    name    varchar(200) not null,
    at      timestamp(6) with time zone not null,
    roles   varchar(200),
    constraint role_changes_fact_pk primary key (batch, line)
);
create index role_changes_fact_by_name on role_changes_fact (name);
