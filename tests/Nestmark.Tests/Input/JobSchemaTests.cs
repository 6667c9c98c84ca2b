using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Json.Schema;
using Nestmark.Input;
using Nestmark.Input.Yaml;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>The published schema and the reader agree; JsonSchema.Net judges, the reader's own YAML tree feeds it.</summary>
public sealed class JobSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(JobSchema.Text);

    [Theory]
    [InlineData("harbour-smock/job.yaml")]
    [InlineData("harbour-smock/job-open.yaml")]
    [InlineData("small-apron/job.yaml")]
    [InlineData("lay-forms/best.yaml")]
    [InlineData("lay-forms/flaws.yaml")]
    [InlineData("lay-forms/partial-given.yaml")]
    [InlineData("lay-forms/tubular.yaml")]
    [InlineData("lay-forms/two-right-sides.yaml")]
    [InlineData("leftovers/l-shape.yaml")]
    [InlineData("leftovers/several.yaml")]
    [InlineData("leftovers/narrower-hem.yaml")]
    [InlineData("leftovers/plaid.yaml")]
    [InlineData("several-cloths/job.yaml")]
    [InlineData("several-cloths/too-wide.yaml")]
    [InlineData("chart/tunic.yaml")]
    [InlineData("chart/shirt.yaml")]
    [InlineData("stripes/lengthwise.yaml")]
    [InlineData("stripes/plaid.yaml")]
    [InlineData("stripes/pocket.yaml")]
    [InlineData("stripes/border.yaml")]
    public void Demo_jobs_are_valid(string name)
    {
        string path = Fixtures.PathOf(name);
        Assert.True(IsValid(File.ReadAllText(path)));
        JobReading reading = JobReader.Read(path, new DiskFiles());
        Assert.Empty(reading.Problems);
        Assert.NotNull(reading.Job);
    }

    [Theory]
    [InlineData("pieces: { a: { circle: 20 cm, cut: 2 } }")]
    [InlineData("pieces: { a: { circle: 1 ½ ft, cut: 1 on the fold, fold: A-B } }")]
    [InlineData("pieces: { a: { polygon: [[0, -1], [3 cm, 0], [2, 2 1/2]], cut: 2 pairs, point_limit: 3, line: cut } }")]
    [InlineData("cloths: { b: { width: 1 1/2 yd, nap: by size, shrinkage: 0 %, tilt: 2.5 deg, buy: { price: 9 EUR per 50 cm } } }")]
    [InlineData("pieces: { a: { circle: 20 cm, cloths: { c: 2 } } }")]
    [InlineData("pieces: { a: { rectangle: 20 x 9, cut: 2, edges: { A-B: 4 }, least: { seam: 5 mm, A-B: 0 } } }")]
    [InlineData("pieces: { a: { circle: 20 cm, cut: 2, cloths: { c: { seam: 0, edges: { A-B: 1 }, ends: squared, grain: any, tilt: 1 deg } } } }")]
    [InlineData("pieces: { a: { circle: 20 cm, line: cut, cloths: { c: { cut: 2, grain: any } } } }")]
    [InlineData("seam: 0")]
    [InlineData("drawings: { a.svg: { scale: 90 dpi, test_square: { side: 2 in, id: square } } }")]
    [InlineData("drawings: { a.PDF: { scale: 104 %, test_square: 5 cm, tiles: { pages: [[1, 2], [3, 0]], trim: 10 mm }, select: { layer: '{size}', color: { S: red } } } }")]
    [InlineData("drawings: { a.dxf: { unit: in, scale: 50 % } }")]
    [InlineData("pieces: { a: { circle_skirt: { waist: 70, length: 60, panels: 1, opening: 18 } } }")]
    [InlineData("sizes: { '38': 3, XL/2: 1 }")]
    [InlineData("seams: [{ join: [p.A-B, 16 cm], gather: 1.5 to 1, on: second, between: [notch 1, 4], corners: free, marks: none, tolerance: 2 mm }]")]
    [InlineData("seams: [{ name: side, join: [p.A-B + 2 x p.B-C, 40 + p.C-D-A], ease: 5 % }, { join: [p.A-B, p.C-D], pleat: to fit }]")]
    [InlineData("seam_tolerance: 1/8 in")]
    [InlineData("pieces: { a: { circle_skirt: { waist: { S: 68, M: 72 }, length: 60, part: 120 deg, panels: 2, hem: 0, edges: cut } } }")]
    [InlineData("pieces: { a: { band: { length: 2 x b.A-B + 3 cm, width: 4, made: single, point: 0, run: across, strips: 2 } } }")]
    [InlineData("pieces: { a: { facing: { of: b.A-B, width: 6 }, cut: 1 pair } }")]
    [InlineData("pieces: { a: { bias: { length: 6 m, width: 4, from: 60 x 45 cm } } }")]
    [InlineData("alter: [{ widen: p, by: 2, at: 4 from A, sides: as cut }, { spread: [p], by: 1 in, slashes: 2, from: D-A, to: B-C, way: parallel }]")]
    [InlineData("alter: [{ cut off: p, at: { from: middle of A-B, to: 9 on C-D } }, { complete: q, sizes: M }]")]
    public void Good_snippets_are_valid(string snippet) => Assert.True(IsValid(Whole(snippet)), snippet);

    [Theory]
    [InlineData("color: red")]
    [InlineData("drawings: { a.svg: { scale: 90 } }")]
    [InlineData("drawings: { a.dxf: { unit: ell } }")]
    [InlineData("pieces: { a: { circle_skirt: { waist: 70, length: 60, opening: 0 } } }")]
    [InlineData("drawings: { a.png: { scale: 90 % } }")]
    [InlineData("drawings: { a.pdf: { tiles: { trim: 10 } } }")]
    [InlineData("drawings: { a.pdf: { tiles: { pages: [] } } }")]
    [InlineData("drawings: { a.pdf: { select: { width: 2 } } }")]
    [InlineData("drawings: { a.pdf: { test_square: 0 } }")]
    [InlineData("seam: -1")]
    [InlineData("match: front matches back")]
    [InlineData("pieces: { a: { rectangle: 20 x 9, cut: 2, least: 1 } }")]
    [InlineData("pieces: { a: { rectangle: 20 x 9, cut: 2, least: {} } }")]
    [InlineData("pieces: { a: { rectangle: 20 x 9, cut: 2, least: { hem: 1 } } }")]
    [InlineData("pieces: { a: { rectangle: 20 x 9, cut: 2, least: { A-B: -1 } } }")]
    [InlineData("match: [p matches q lengthwise]")]
    [InlineData("match: [p.A matches q.A sideways]")]
    [InlineData("match: [p.A on a slanting bar]")]
    [InlineData("cloths: { b: { width: 140, repeat: { even: yes } } }")]
    [InlineData("cloths: { b: { width: 140, repeat: { along: 0 } } }")]
    [InlineData("cloths: { b: { width: 140, repeat: { along: 6, even: maybe } } }")]
    [InlineData("cloths: { b: { width: 140, border: { edge: near, from: 4 } } }")]
    [InlineData("cloths: { b: { width: 140, border: { edge: top, from: 4, depth: 18 } } }")]
    [InlineData("seam: 1,5 cm")]
    [InlineData("seam: 1 furlong")]
    [InlineData("seam: 1/0 in")]
    [InlineData("seam: [1]")]
    [InlineData("sizes: { M: 0 }")]
    [InlineData("sizes: { M: many }")]
    [InlineData("sizes: {}")]
    [InlineData("pieces: {}")]
    [InlineData("pieces: { a: { cut: 2 } }")]
    [InlineData("pieces: { a: { circle: 20 } }")]
    [InlineData("pieces: { a: { circle: 0, cut: 2 } }")]
    [InlineData("pieces: { a: { circle: 0.0 cm, cut: 2 } }")]
    [InlineData("pieces: { a: { circle: 20, rectangle: 1 x 2, cut: 2 } }")]
    [InlineData("pieces: { a: { rectangle: 16, cut: 2 } }")]
    [InlineData("pieces: { a: { polygon: [[0, 0], [1, 1]], cut: 2 } }")]
    [InlineData("pieces: { a: { polygon: [[0, 0, 0], [1, 1, 1], [2, 0, 0]], cut: 2 } }")]
    [InlineData("pieces: { a: { outline: a.svg, cut: 2 } }")]
    [InlineData("pieces: { a: { outline: a.png#b, cut: 2 } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 0 } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 1 pear } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 2, grain: sideways } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 2, ends: round } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 2, line: middle } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 2, tilt: 2 } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 2, point_limit: 0.5 } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 2, fold: left } }")]
    [InlineData("pieces: { a: { rectangle: 9 x 9, cut: 2, edges: { left: 4 } } }")]
    [InlineData("pieces: { a: { rectangle: 9 x 9, cut: 2, edges: { A-B: { ends: mitred } } } }")]
    [InlineData("pieces: { a: { rectangle: 9 x 9, cut: 2, edges: { A-B: { width: 4, depth: 2 } } } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 2, cloth: c, cloths: { c: 2 } } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 2, cloths: {} } }")]
    [InlineData("pieces: { a: { circle: 20, cloths: { c: {} } } }")]
    [InlineData("pieces: { a: { circle: 20, cloths: { c: 0 } } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 2, cloths: { c: { line: cut } } } }")]
    [InlineData("pieces: { a: { circle: 20, cut: 2, line: cut, cloths: { c: { seam: 1 } } } }")]
    [InlineData("cloths: { b: {} }")]
    [InlineData("cloths: {}")]
    [InlineData("cloths: { b: { width: 0 } }")]
    [InlineData("cloths: { b: { width: wide } }")]
    [InlineData("cloths: { b: { width: 1e400 } }")]
    [InlineData("cloths: { b: { width: .nan } }")]
    [InlineData("cloths: { b: { width: 140, lay: crosswise } }")]
    [InlineData("cloths: { b: { width: 140, nap: both } }")]
    [InlineData("cloths: { b: { width: 140, shrinkage: 5 } }")]
    [InlineData("cloths: { b: { width: 140, shrinkage: 60 % } }")]
    [InlineData("cloths: { b: { width: 140, shrinkage: { depth: 5 % } } }")]
    [InlineData("cloths: { b: { width: 140, buy: { price: 18.50 } } }")]
    [InlineData("cloths: { b: { width: 140, buy: { stp: 10 cm } } }")]
    [InlineData("cloths: { 'b*': { width: 140 } }")]
    [InlineData("alter: []")]
    [InlineData("seam_tolerance: 0")]
    [InlineData("seams: { a: 1 }")]
    [InlineData("seams: [{ name: side }]")]
    [InlineData("seams: [{ join: [p.A-B] }]")]
    [InlineData("seams: [{ join: [p.A-B, left] }]")]
    [InlineData("seams: [{ join: [p.A-B, p.C-D], ease: much }]")]
    [InlineData("seams: [{ join: [p.A-B, p.C-D], gather: 0.5 to 1 }]")]
    [InlineData("seams: [{ join: [p.A-B, p.C-D], gather: 2 cm, ease: 1 cm }]")]
    [InlineData("seams: [{ join: [p.A-B, p.C-D], gather: 2 cm, between: [4] }]")]
    [InlineData("seams: [{ join: [p.A-B, p.C-D], corners: round }]")]
    [InlineData("seams: [{ join: [p.A-B, p.C-D], sewn: 1 }]")]
    [InlineData("pieces: { a: { band: { length: 90 } } }")]
    [InlineData("pieces: { a: { band: { length: 90, width: 4, made: triple } } }")]
    [InlineData("pieces: { a: { waistband: { along: 90, width: 0 } } }")]
    [InlineData("pieces: { a: { ruffle: { edge: 80, depth: 10 }, cut: 2 } }")]
    [InlineData("pieces: { a: { ruffle: { edge: 80, depth: 10, ratio: 2 } } }")]
    [InlineData("pieces: { a: { circle_skirt: { waist: 70, length: 60, part: whole } } }")]
    [InlineData("pieces: { a: { circle_skirt: { waist: 70 } } }")]
    [InlineData("pieces: { a: { bias: { length: 6 m, width: 4, from: cloth } } }")]
    [InlineData("pieces: { a: { facing: { width: 6 } } }")]
    [InlineData("pieces: { a: { pocket_bag: { opening: 16, width: 15 } } }")]
    [InlineData("pieces: { a: { band: { length: 90, width: 4 }, rectangle: 1 x 2, cut: 2 } }")]
    [InlineData("alter: [{ widen: p, at: fold }]")]
    [InlineData("alter: [{ widen: p, narrow: p, by: 2, at: fold }]")]
    [InlineData("alter: [{ move: p, corner: b, along: 2 }]")]
    [InlineData("alter: [{ move: p, corner: B }]")]
    [InlineData("alter: [{ split: p, at: 4 from A, into: { a: A } }]")]
    [InlineData("alter: [{ join: p, along: [A-B, C-D] }]")]
    [InlineData("alter: [{ raise: waist, by: 2 }]")]
    [InlineData("alter: [{ extend: p, edge: A-B, by: 0 }]")]
    [InlineData("grade: { base: M }")]
    [InlineData("grade: { base: M, order: [M], pieces: { p: { B: { M: 2 } } } }")]
    [InlineData("nestmark: 2")]
    [InlineData("units: ft")]
    public void Bad_snippets_are_refused_by_both(string snippet)
    {
        Assert.False(IsValid(Whole(snippet)));
        Assert.Contains(Jobs.Read(Whole(snippet)).Problems, problem => problem.Severity == Severity.Error);
    }

    [Fact]
    public void Every_key_has_a_title_or_a_reference_and_a_description_somewhere()
    {
        JsonObject definitions = JsonNode.Parse(JobSchema.Text)!["$defs"]!.AsObject();
        foreach (string kind in (string[])["piece", "cloth"])
        {
            foreach ((string key, JsonNode? value) in definitions[kind]!["properties"]!.AsObject())
                Assert.True(value!["title"] is not null || value["$ref"] is not null, key);
        }
    }

    /// <summary>A whole job around some keys, which replace the usual ones.</summary>
    private static string Whole(string snippet)
    {
        string key = snippet[..snippet.IndexOf(':', StringComparison.Ordinal)];
        string[] usual = ["nestmark: 1", "title: Test", "units: cm", "pieces: { p: { rectangle: 16 x 18, cut: 1 pair } }", "cloths: { c: { width: 140 } }"];
        return string.Join('\n', usual.Where(line => !line.StartsWith(key + ":", StringComparison.Ordinal)).Append(snippet)) + "\n";
    }

    private static bool IsValid(string yaml)
    {
        MapNode map = YamlTree.Read(Encoding.UTF8.GetBytes(yaml), "job.yaml", new ProblemList())!;
        return Schema.Evaluate(System.Text.Json.JsonSerializer.SerializeToElement(Json(map))).IsValid;
    }

    private static JsonNode? Json(JobNode node) => node switch
    {
        MapNode map => new JsonObject(map.Entries.Select(entry => KeyValuePair.Create(entry.Key.Text, Json(entry.Value)))),
        ListNode list => new JsonArray([.. list.Items.Select(Json)]),
        TextNode text when decimal.TryParse(text.Text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number) => JsonValue.Create(number),
        TextNode text => JsonValue.Create(text.Text),
        _ => null,
    };
}
