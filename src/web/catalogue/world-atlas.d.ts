/** Land at 1:50 million as shared arcs. Declared here, for the file's own half million characters would be its type. */
declare module "world-atlas/land-50m.json" {
  const topology: import("topojson-specification").Topology<{
    land: import("topojson-specification").GeometryCollection<import("geojson").GeoJsonProperties>;
  }>;
  export default topology;
}
