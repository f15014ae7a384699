// Memory is given by the page, each when it is first touched. Where many are about to be touched, asking for them
// together is cheaper; above all on a virtual machine, where every first touch is dear.
#pragma once
#include <cstddef>

namespace endbell::inline base {

/// Of a mapped file: these bytes are about to be read. Changes nothing but time, and nothing at all where the system
/// does not know how.
void bring_in(const void* start, std::size_t bytes);
/// The same of memory that is about to be written.
void bring_in_to_write(void* start, std::size_t bytes);

/// A page of the larger kind, where a system has them: one of them stands for 512, and is brought in as soon as ten.
constexpr std::size_t large_page = std::size_t{2} * 1024 * 1024;
/// Whole large pages between these ends are to be brought in as such. Changes nothing but time.
void prefer_large_pages(void* start, std::size_t bytes);

}  // namespace endbell::inline base
