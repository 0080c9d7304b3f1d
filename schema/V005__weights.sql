-- What cores weigh as they were packed, and the most that a site lets a shipment weigh.

alter table cores_fact add column weight decimal(18,6);
alter table cores_fact add column weight_unit varchar(200);

alter table sites_fact add column shipment_limit decimal(18,6);
alter table sites_fact add column shipment_limit_unit varchar(200);

alter table site add column shipment_limit decimal(18,6);
alter table site add column shipment_limit_unit varchar(10);
