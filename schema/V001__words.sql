create table site (site_no smallint not null, site varchar(40) not null, constraint site_pk primary key (site_no));
