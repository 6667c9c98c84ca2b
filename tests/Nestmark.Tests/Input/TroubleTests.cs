using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

public sealed class DumpTests
{
    [Fact]
    public void Dump()
    {
        using StreamWriter w = new("/tmp/dump.txt");
        foreach (string f in Directory.GetFiles(Fixtures.PathOf("trouble"), "*.yaml").Concat(Directory.GetFiles(Fixtures.Folder, "job*.yaml", SearchOption.AllDirectories)).Order(StringComparer.Ordinal))
        {
            w.WriteLine("## " + Path.GetFileName(f));
            try
            {
                var sw = System.Diagnostics.Stopwatch.StartNew();
                JobReading r = JobReader.Read(f, new DiskFiles());
                w.WriteLine(r.Job is null ? "no job" : $"job {r.Job.Pieces.Length} pieces");
                if (sw.ElapsedMilliseconds > 100) w.WriteLine($"SLOW {sw.ElapsedMilliseconds}");
                if (f.Contains("job") && r.Job is not null)
                    foreach (var x in r.Job.Pieces)
                        w.WriteLine($"  {x.Piece.Title} {x.Piece.Cut} {x.Piece.CuttingLine.Bounds.Width / 1000.0} x {x.Piece.CuttingLine.Bounds.Height / 1000.0} corners {string.Join(' ', x.Piece.Corners.Select(c => c.Letter))} pts {x.Piece.CuttingLine.Outer.Length} notches {x.Piece.Notches.Length} fold {x.Piece.FoldEdge}");
                foreach (Problem p in r.Problems)
                    w.WriteLine($"{p.Severity} {Path.GetFileName(p.Where.File)}:{p.Where.Line}:{p.Where.Column}|{p.Where.Item}|{p.What}|{p.Hint}");
            }
            catch (Exception e)
            {
                w.WriteLine("THROWN " + e);
            }
        }
    }
}
