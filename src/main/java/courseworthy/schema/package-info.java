/** JSON Schemas of the files people write, made from the catalogues, so that editors complete and check. */
package courseworthy.schema;
