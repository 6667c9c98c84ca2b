namespace Nestmark.Bench.Yield;

/// <summary>Which clock ends a run.</summary>
internal enum ClockKind
{
    /// <summary>Wall clock.</summary>
    Wall,

    /// <summary>Processor time of the whole process, divided by the threads: for comparing changes on a busy machine.</summary>
    Processor,
}
