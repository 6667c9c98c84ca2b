namespace Nestmark.Input.Yaml;

/// <summary>A node of a job file with its place, line and column from 1.</summary>
internal abstract record JobNode(int Line, int Column);
